import { choiceOf, fieldsOf, numberOf } from '../check.js';
import { PacingError } from '../errors.js';
import { timeOf } from '../time/hundredths.js';
import { COLLEGIATE_METHODS, collegiateModel, tableFits } from './collegiate.js';
import type {
  Conversion,
  ConversionMethod,
  ConvertTimeOptions,
  SwimToConvert,
} from './conversion.js';
import { conversionCautions } from './conversion-cautions.js';
import { convertedTime } from './conversion-model.js';
import { courseGapRange } from './course-gap.js';
import { pairedDistance, STROKES } from './event.js';
import { lengthsIn, type Pool, poolOf } from './pool.js';
import { turnModel } from './turn-model.js';

/**
 * Converts a time from one pool to another: for an entry, or to compare two swims. It is no performance, and
 * the cautions say how little is known of how far it is off.
 *
 * The collegiate tables hold from metres to 25 yd: multiply, then drop the third decimal. By turns:
 * time × the ratio of the distances + the gain per turn × turns fewer, rounded once; yards to metres.
 * Against its direction a method gives the slowest time that still converts to the given one, or
 * better: exactly what meets a qualifying time, where dividing could miss it by a hundredth.
 * All in whole numbers, and a slower time never converts to a faster one. Gains per turn are in
 * {@link TURN_GAINS}; they disagree.
 *
 * @param swim - The time in hundredths of a second, the distance in the pool's unit, stroke, sex and
 *   the pool it was swum in.
 * @param to - The pool to convert to.
 * @param options - `method`; for `turns` also `gainPerTurn` in hundredths of a second and, where it
 *   should not be the exact one, `yardRatio`, a ratio.
 * @returns The time in hundredths of a second, the distance in the new pool's unit, and all it rests on.
 * @throws {@link PacingError} `no-published-factor` where no table holds for the pools or the event;
 *   `gain-missing`; `not-whole-lengths`; `too-large`; `wrong-shape`, `unknown-choice`, `out-of-range`
 *   or `not-a-time` where a field is not what it should be.
 * @example
 * const swim = { time: parseTime('1:50.87'), distance: 200, stroke: 'fly', from: SCM } as const;
 * const { time, method } = convertTime(swim, SCY);
 * [formatTime(time), method]; // => ['1:40.44', 'collegiate-2021-22']
 * @example
 * const swim = { time: parseTime('16:46.60'), distance: 1500, stroke: 'free', from: LCM } as const;
 * formatTime(convertTime(swim, SCM, { gainPerTurn: hundredths(60) }).time); // => '16:28.60'
 * @see US collegiate qualifying standards (Division I), seasons 2021–22 and 2023–24, as quoted by news
 *   reports; Wolfrum et al. 2013 (SpringerPlus 2:643; Medicina Sportiva 17(3)) and 2014 (J. Human
 *   Kinetics 42) for the ranges.
 */
export function convertTime(
  swim: SwimToConvert,
  to: Pool,
  options: ConvertTimeOptions = {},
): Conversion {
  const fields = fieldsOf(swim, 'The swim');
  const choices = fieldsOf(options, 'The options');
  const time = timeOf(fields['time'], 'The time');
  const stroke = choiceOf(fields['stroke'], STROKES, 'The stroke');
  const distance = numberOf(fields['distance'], 'The distance', { min: 1, max: 1e6 });
  const here = { pool: poolOf(fields['from'], 'The pool swum in'), distance };
  const pool = poolOf(to, 'The new pool');
  const there = { pool, distance: pairedDistance(stroke, distance, here.pool.unit, pool.unit) };
  for (const side of [here, there]) lengthsIn(side.pool, side.distance);

  const method = methodOf(choices, here.pool, pool);
  const model =
    method === 'turns'
      ? turnModel(here, there, choices)
      : collegiateModel(method, { stroke, sex: fields['sex'] }, here, there);
  const converted = {
    time: convertedTime(model, time),
    distance: there.distance,
    method,
    factor: model.factor,
    wayBack: model.wayBack,
    ...(model.turnsFewer !== undefined && { turnsFewer: model.turnsFewer }),
    source: model.source,
    range: courseGapRange(time, { stroke, distance }, here.pool, pool),
  };
  return { ...converted, cautions: conversionCautions(converted) };
}

function methodOf(choices: Record<string, unknown>, from: Pool, to: Pool): ConversionMethod {
  const { method, gainPerTurn } = choices;
  if (method !== undefined) {
    return choiceOf(method, [...COLLEGIATE_METHODS, 'turns'], 'The method');
  }
  if (gainPerTurn !== undefined) return 'turns';
  const published = COLLEGIATE_METHODS.find((name) => tableFits(name, from, to));
  if (published !== undefined) return published;
  const message =
    'No factors are published between these two pools; use the method "turns" with a gain per turn.';
  throw new PacingError('no-published-factor', message, to);
}
