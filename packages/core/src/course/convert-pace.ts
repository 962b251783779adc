import { fieldsOf, numberOf } from '../check.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';
import { convertedTime } from './conversion-model.js';
import { type Pool, poolOf } from './pool.js';
import { type TurnOptions, turnModel } from './turn-model.js';

/** How {@link convertPace} converts. */
export interface ConvertPaceOptions extends TurnOptions {
  /** The stretch the pace is for, the same number in both pools' units; 100 unless given. */
  readonly per?: number;
}

/**
 * Converts a pace to another pool, by turns: a pace per 100 m becomes one per 100 yd. For a set that moves to
 * another pool.
 *
 * What a turn gains differs between swimmers, and published gains disagree: see {@link TURN_GAINS}. Races
 * are converted by {@link convertTime}, send-offs by {@link convertSendOff}.
 *
 * @param pace - The time for each stretch, in hundredths of a second.
 * @param from - The pool it is held in.
 * @param to - The pool to convert to.
 * @param options - `gainPerTurn` in hundredths of a second; `per`, the stretch in the pool's unit;
 *   `yardRatio`, a ratio.
 * @returns The pace in hundredths of a second for the same number in the new pool's unit.
 * @throws {@link PacingError} `gain-missing`; `not-whole-lengths` where the stretch ends between the
 *   walls; `not-a-time`, `out-of-range`, `too-large`, `wrong-shape`, `unknown-choice`.
 * @example
 * const gainPerTurn = hundredths(60);
 * formatTime(convertPace(parseTime('1:07.00'), LCM, SCM, { gainPerTurn })); // => '1:05.80'
 */
export function convertPace(
  pace: Hundredths,
  from: Pool,
  to: Pool,
  options: ConvertPaceOptions,
): Hundredths {
  const turns = fieldsOf(options, 'The options');
  const { per = 100 } = turns;
  const distance = numberOf(per, 'The stretch of the pace', { min: 1, max: 1e6 });
  const here = { pool: poolOf(from, 'The pool swum in'), distance };
  const there = { pool: poolOf(to, 'The new pool'), distance };
  return convertedTime(turnModel(here, there, turns), timeOf(pace, 'The pace'));
}
