import { formatTime, hundredths } from 'backhalf';
import { readTaps, type Tap, tapsText, tapText, type Word } from './touches-text';

/** A finger that bounces touches twice within this time, in hundredths of a second. */
export const bounce = 15;

/** The touches after one more, or why it was left out. */
export interface Tapped {
  readonly touches: string;
  readonly said: string;
}

/** One more touch. A second one of the same button within a moment is a bounce of the finger. */
export function withTap(touches: string, tap: Tap): Tapped {
  const last = readTaps(touches).taps.findLast(
    ({ lane, mark }) => lane === tap.lane && mark === tap.mark,
  );
  if (last !== undefined && tap.time >= last.time && tap.time - last.time < bounce) {
    const after = formatTime(hundredths(tap.time - last.time), { signed: true }).slice(1);
    return { touches, said: `A second touch ${after} s after the last was ignored.` };
  }
  return { touches: `${touches} ${tapText(tap)}`.trim(), said: '' };
}

/** Without the last touch. */
export function withoutLast(touches: string): Tapped {
  const { taps } = readTaps(touches);
  const last = taps.at(-1);
  if (last === undefined) return { touches, said: 'There is no touch to undo.' };
  return {
    touches: tapsText(taps.slice(0, -1)),
    said: `The touch at ${formatTime(last.time)} was undone.`,
  };
}

/** With a person’s word on one touch, or with that word taken back. */
export function withWord(touches: string, index: number, word: Word | 'nobody' | null): string {
  const { taps } = readTaps(touches);
  const next = taps.map((tap, i): Tap => {
    if (i !== index) return tap;
    const { word: before, ...bare } = tap;
    return word === null ? bare : { ...bare, word };
  });
  return tapsText(next);
}
