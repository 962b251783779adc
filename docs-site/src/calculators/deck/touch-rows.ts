import { type DeckReading, formatTime, type TouchReading } from 'backhalf';
import type { Tap, Word } from './touches-text';

/** What a touch may be, in words, and the word a person gives for it. */
export interface Choice {
  readonly text: string;
  readonly word: Word | 'nobody';
}

/** A touch with its reading, ready to be shown. */
export interface TouchRow {
  /** Its place among the taps, a count from 0. */
  readonly index: number;
  readonly time: string;
  /** Whose it is: `Mara Quill, rep 1, finish`. */
  readonly text: string;
  /** How sure that is, in per cent; none where a person said so. */
  readonly sure: string | null;
  readonly doubtful: boolean;
  /** Whether a person said whose it is. */
  readonly said: boolean;
  /** What a person may say of a doubtful touch, the reading itself first. */
  readonly choices: readonly Choice[];
}

/** The touches in the order of tapping. */
export function touchRows(taps: readonly Tap[], reading: DeckReading): readonly TouchRow[] {
  const read = [...taps.entries()]
    .filter(([, { word }]) => word !== 'nobody')
    .sort(([, a], [, b]) => a.time - b.time);
  const places = new Map(read.map(([index], place) => [index, place]));
  return taps.map((tap, index) => {
    const found = reading.touches[places.get(index) ?? -1];
    const said = tap.word !== undefined;
    const time = formatTime(tap.time);
    if (found === undefined) {
      return { index, time, text: nobody.text, sure: null, doubtful: false, said, choices: [] };
    }
    const own = choiceOf(found);
    const choices = found.doubtful ? [own, ...found.alternatives.map(choiceOf)] : [];
    const open = choices.length > 0 && !choices.some(({ word }) => word === 'nobody');
    return {
      index,
      time,
      text: own.text,
      sure: said ? null : `${Math.round(found.confidence * 100)} %`,
      doubtful: found.doubtful && !said,
      said,
      choices: said ? [] : open ? [...choices, nobody] : choices,
    };
  });
}

const nobody: Choice = { text: 'nobody’s', word: 'nobody' };

function choiceOf({ swimmer, name, rep, mark }: TouchReading): Choice {
  if (swimmer === null || rep === null || mark === null) return nobody;
  return { text: `${name}, rep ${rep}, ${mark}`, word: { swimmer, rep, mark } };
}

/** The marks that nobody touched, in words. */
export const missingText = ({ missing }: DeckReading): readonly string[] =>
  missing.map(({ name, rep, mark }) => `${name}, rep ${rep}, ${mark}`);
