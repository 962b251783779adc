import { type Hundredths, hundredths } from 'backhalf';
import { gapText } from '~/ui/wording';
import type { PlanFields } from './fields';

/** The fields with the halves drawn as far apart as this; no difference is an even race. */
export function withDifference(fields: PlanFields, difference: number): PlanFields {
  if (difference === 0) return { ...fields, shape: 'even' };
  const way = difference < 0 ? 'faster' : 'slower';
  return { ...fields, shape: 'halves', way, gap: gapText(hundredths(difference)) };
}

/** One press of a button: a thousandth of the goal, to a tenth of a second. A choice of ours. */
export const nudgeOf = (goal: Hundredths): Hundredths =>
  hundredths(Math.max(1, Math.round(goal / 10_000)) * 10);
