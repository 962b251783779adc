import { choiceOf } from '../check.js';
import { speedOf } from './open-water-legs.js';

/** A published change of swimming speed: a range, with its conditions. */
export interface OpenWaterEffect {
  /** The lower end of the change, as a share of the speed: 0.03 is 3 %. */
  readonly low: number;
  /** The upper end of the change, as a share of the speed. */
  readonly high: number;
  /** In what conditions it was measured. */
  readonly conditions: string;
  /** Where it was published. */
  readonly source: string;
}

/** What open-water rules and company can change, beyond the swimmer. */
export type OpenWaterEffectName = 'drafting' | 'wetsuit';

/** A swimming speed under a published effect. */
export interface SpeedRange {
  /** The slow end, in metres per second. */
  readonly low: number;
  /** The fast end, in metres per second. */
  readonly high: number;
  /** What the range covers, and whose figure it rests on. */
  readonly covers: string;
}

/**
 * Published effects of drafting and wetsuits on swimming speed. None is applied unasked, and none is one figure;
 * {@link speedWithEffect} applies one.
 *
 * @example
 * const { low, high } = OPEN_WATER_EFFECTS.wetsuit;
 * [low, high]; // => [0.032, 0.129]
 */
export const OPEN_WATER_EFFECTS: Readonly<Record<OpenWaterEffectName, OpenWaterEffect>> = {
  // 400 m in 4:57.25 alone and in 4:47.69 behind a leader: one figure, so it is only the upper end.
  drafting: {
    low: 0,
    high: 0.033,
    conditions: 'from nothing to what 8 swimmers gained right behind a leader, 400 m in a pool',
    source: 'Chatard et al. 1998, Med. Sci. Sports Exerc. 30(8)',
  },
  wetsuit: {
    low: 0.032,
    high: 0.129,
    conditions: 'full-body suits, 25 to 1500 m, 5 and 30 min, pool and open water, 26 studies',
    source: 'Gay et al. 2022, Physiologia 2(4)',
  },
};

/**
 * A swimming speed as drafting or a wetsuit may change it: always a range, from published figures. Plan
 * with both ends ({@link planOpenWater}). Whether either is allowed depends on the rules of the day.
 *
 * @param speed - Swimming speed alone and without a wetsuit, in metres per second.
 * @param effect - `drafting` or `wetsuit`.
 * @returns The slow and the fast end in metres per second, and what they cover.
 * @throws {@link PacingError} `out-of-range` for a speed outside 0.1 to 4 m/s; `unknown-choice`.
 * @example
 * const { low, high } = speedWithEffect(1.25, 'wetsuit');
 * [low.toFixed(2), high.toFixed(2)]; // => ['1.29', '1.41']
 * @see Gay et al. 2022, Physiologia 2(4), for wetsuits; Chatard et al. 1998, Med. Sci. Sports Exerc.
 *   30(8), for drafting.
 */
export function speedWithEffect(speed: number, effect: OpenWaterEffectName): SpeedRange {
  const alone = speedOf(speed, 'The swimming speed');
  const { low, high, conditions, source } =
    OPEN_WATER_EFFECTS[choiceOf(effect, ['drafting', 'wetsuit'], 'The effect')];
  return {
    low: alone * (1 + low),
    high: alone * (1 + high),
    covers: `Measured: ${conditions} (${source}). One swimmer may lie outside.`,
  };
}
