import { type DeckMark, type Hundredths, hundredths, type Touch } from 'backhalf';

/** Whose mark a person said a touch was. */
export interface Word {
  /** The swimmer’s place in the list, a count from 0. */
  readonly swimmer: number;
  readonly rep: number;
  readonly mark: DeckMark;
}

/** A touch of the thumb as it is kept: the button may say lane or mark, a person may say the rest. */
export interface Tap {
  /** Time since the first swimmer left, in hundredths of a second. */
  readonly time: Hundredths;
  readonly lane?: number;
  readonly mark?: DeckMark;
  /** What a person said of it afterwards. */
  readonly word?: Word | 'nobody';
}

const letters = { halfway: 'h', finish: 'f' } as const;
const markOf = (letter: string): DeckMark => (letter === 'h' ? 'halfway' : 'finish');

/** A tap as text that an address holds well: `65.02`, `65.02h`, `65.02l3`, `65.02*2.1f`, `65.02*x`. */
export function tapText({ time, lane, mark, word }: Tap): string {
  const said =
    word === undefined
      ? ''
      : word === 'nobody'
        ? '*x'
        : `*${word.swimmer + 1}.${word.rep}${letters[word.mark]}`;
  const kind = mark === undefined ? '' : letters[mark];
  return `${(time / 100).toFixed(2)}${kind}${lane === undefined ? '' : `l${lane}`}${said}`;
}

const form = /^(\d{1,6}\.\d\d)([hf])?(?:l(\d{1,2}))?(?:\*(?:(x)|(\d{1,3})\.(\d{1,4})([hf])))?$/;

function tapOf(text: string): Tap | null {
  const parts = form.exec(text);
  if (parts === null) return null;
  const [, seconds = '', kind, lane, nobody, swimmer, rep, mark] = parts;
  const word =
    nobody !== undefined
      ? 'nobody'
      : mark !== undefined && {
          swimmer: Number(swimmer) - 1,
          rep: Number(rep),
          mark: markOf(mark),
        };
  return {
    time: hundredths(Math.round(Number(seconds) * 100)),
    ...(kind !== undefined && { mark: markOf(kind) }),
    ...(lane !== undefined && { lane: Number(lane) }),
    ...(word && { word }),
  };
}

export interface TapsText {
  /** The taps in the order of tapping. */
  readonly taps: readonly Tap[];
  /** What could not be read, as it stands there. */
  readonly unread: readonly string[];
}

export function readTaps(text: string): TapsText {
  const words = text.split(/\s+/).filter((word) => word !== '');
  const read = words.map((word) => ({ word, tap: tapOf(word) }));
  return {
    taps: read.flatMap(({ tap }) => (tap !== null && tap.time > 0 ? tap : [])),
    unread: read.flatMap(({ word, tap }) => (tap === null || tap.time <= 0 ? word : [])),
  };
}

export const tapsText = (taps: readonly Tap[]): string => taps.map(tapText).join(' ');

/** A tap as the library reads it; nothing where a person said it is nobody’s. */
export function touchOf({ time, lane, mark, word }: Tap): Touch | null {
  if (word === 'nobody') return null;
  return {
    time,
    ...(lane !== undefined && { lane }),
    ...(mark !== undefined && { mark }),
    ...word,
  };
}
