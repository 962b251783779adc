import { type Caution, cautionsWhere } from '../caution.js';
import type { RepReading } from './read-set.js';

// Choices of ours, no published value: each only decides whether a caution is shown.
const ENOUGH_REPS = 8; // a count; the classic reading set has about twenty
const LONG_REST = 0.5; // of the swim; the classic is 20 to 30 s on a 100
const UNEVEN = 0.02; // of the mean rep

/** What to know before trusting a reading. Times in hundredths of a second. */
export function setCautions(
  reps: readonly RepReading[],
  facts: { average: number; spread: number; fade: number; rest: number | null },
): readonly Caution[] {
  const count = reps.length;
  const unmarked = reps.filter(({ halves }) => halves === null).length;
  const missed = reps.filter(({ rest }) => rest !== null && rest < 0).length;
  return cautionsWhere(
    [
      count < ENOUGH_REPS,
      'few-reps',
      `Only ${count} ${count === 1 ? 'rep' : 'reps'}: a reading set has about twenty, so that tiredness shows.`,
    ],
    [
      facts.rest !== null && facts.rest > LONG_REST * facts.average,
      'long-rest',
      'The rest is more than half as long as the swim: each rep starts fresh, which flatters both halves.',
    ],
    [
      facts.rest === null,
      'rest-unknown',
      'Neither send-off nor rest is known: the longer the rest, the more the reps flatter.',
    ],
    [
      missed > 0,
      'missed-send-off',
      `${missed} of ${count} reps took longer than the send-off: the set was not swum as set.`,
    ],
    [
      unmarked > 0,
      'no-halfway-mark',
      `${unmarked} of ${count} reps have no mark at or before halfway and tell nothing about the second half.`,
    ],
    [
      reps.some(({ halves }) => halves?.interpolated === true),
      'halves-interpolated',
      'Halfway was read off a straight line between two marks; a split taken at halfway is better.',
    ],
    [
      facts.spread > UNEVEN * facts.average,
      'reps-uneven',
      'The reps vary by more than 2 %: no single pace describes them well.',
    ],
    [
      facts.fade > UNEVEN * facts.average,
      'fading',
      'The last third was more than 2 % slower than the first: the mean is faster than where it ended.',
    ],
  );
}
