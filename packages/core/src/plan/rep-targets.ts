import { type Caution, cautionsWhere } from '../caution.js';
import { fieldsOf } from '../check.js';
import { PacingError } from '../errors.js';
import type { SetReading } from '../sets/read-set.js';
import { differenceOf, type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import { checkDifference, halfTimes } from './half-times.js';

/** One step is half a percent of the rep, to a tenth of a second as a stopwatch is read. A choice of ours. */
const STEP = 0.005;
const TENTH = 10;

/** What the watch must show in a rep. */
export interface RepTarget {
  /** At halfway, in hundredths of a second. */
  readonly halfway: Hundredths;
  /** At the wall, in hundredths of a second: the whole rep. */
  readonly wall: Hundredths;
  /** Second half less first, in hundredths of a second; below zero is a negative split. */
  readonly difference: Hundredths;
}

/** What to aim at in the next set. */
export interface RepTargets {
  /** The honest pace held over the whole rep: twice the mean second half. */
  readonly honest: RepTarget;
  /** One step better. */
  readonly better: RepTarget;
  /** Honest halfway target less today's mean first half, in hundredths of a second: above zero is "go out slower". */
  readonly goOut: Hundredths;
  /** Second half that the honest target asks for less today's mean, in hundredths of a second: below zero is "come home faster". */
  readonly comeHome: Hundredths;
  /** What to know before setting them. */
  readonly cautions: readonly Caution[];
}

/** The split and the step that {@link targetsFor} aims at. */
export interface TargetsForOptions {
  /**
   * Second half less first (a difference, not the half's own time), in hundredths of a second; below zero for a
   * negative split, 0 unless given.
   */
  readonly secondHalf?: Hundredths;
  /**
   * How much faster the better rep is, in hundredths of a second; half a percent of the rep (to a tenth of a
   * second, at least one) unless given, which is a choice, not a published value.
   */
  readonly step?: Hundredths;
}

/**
 * Half targets for the next set, from today's reading: what the watch must show at halfway and at the
 * wall to hold the honest pace in an even or a negative rep, and one step better.
 *
 * That twice the second half can be held is common practice, not a tested rule. Where the hundredths do not halve,
 * the first half takes the odd one.
 *
 * @param reading - Today's set, read; see {@link readSet}. Times in hundredths of a second.
 * @param options - The split wanted and the step to the better rep, in hundredths of a second.
 * @returns The targets in hundredths of a second.
 * @throws {@link PacingError} `halfway-not-bracketed` where the reading has no halves; `out-of-range`
 *   where a half is left no time, or the halves would differ by more than a quarter of the rep; `not-a-time`, `wrong-shape`, `too-large`.
 * @example
 * const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
 * const reading = readSet({ pool: SCM, repDistance: 100, reps: Array(20).fill(rep) });
 * const targets = targetsFor(reading);
 * targets.honest; // => { halfway: 3350, wall: 6700, difference: 0 }
 * targets.goOut; // => 200
 * targetsFor(reading, { secondHalf: fromSeconds(-0.6) }).better; // => { halfway: 3365, wall: 6670, difference: -60 }
 */
export function targetsFor(reading: SetReading, options: TargetsForOptions = {}): RepTargets {
  const { halves } = fieldsOf(reading, 'The reading');
  if (halves === null) {
    const message = 'The set was read without halves; time halfway of at least one rep.';
    throw new PacingError('halfway-not-bracketed', message, reading);
  }
  const today = fieldsOf(halves, "The reading's halves");
  const first = timeOf(today['first'], 'The first half');
  const second = timeOf(today['second'], 'The second half');
  const asked = fieldsOf(options, 'The options');
  const secondHalf = differenceOf(asked['secondHalf'] ?? 0, 'The second half');
  const wall = hundredths(2 * second);
  checkDifference(secondHalf, wall);
  const step = asked['step'] === undefined ? stepOf(wall) : timeOf(asked['step'], 'The step');

  const honest = targetOf(wall, secondHalf);
  const better = targetOf(hundredths(wall - step), secondHalf);
  return {
    honest,
    better,
    goOut: hundredths(honest.halfway - first),
    comeHome: hundredths(wall - honest.halfway - second),
    cautions: cautionsWhere(
      [
        true,
        'rule-untested',
        'Holding twice the second half is common practice; no published study has tested it.',
      ],
      [
        honest.difference !== secondHalf || better.difference !== secondHalf,
        'odd-hundredth',
        'The hundredths do not halve as asked: the first half takes the odd one.',
      ],
    ),
  };
}

function stepOf(wall: number): Hundredths {
  return hundredths(Math.max(1, Math.round((wall * STEP) / TENTH)) * TENTH);
}

function targetOf(wall: Hundredths, secondHalf: Hundredths): RepTarget {
  const { first, second } = halfTimes(wall, secondHalf);
  if (first > 0 && second > 0) {
    return { halfway: first, wall, difference: hundredths(second - first) };
  }
  const message = 'A half would be left no time; choose a smaller difference or step.';
  throw new PacingError('out-of-range', message, secondHalf);
}
