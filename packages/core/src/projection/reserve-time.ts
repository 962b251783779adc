import { cautionsWhere } from '../caution.js';
import { fieldsOf, numberOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { PacingError } from '../errors.js';
import { restAfter, type SwumSet, setOf } from '../sets/swum-set.js';
import { finishOf } from '../splits/splits.js';
import { greatestOf } from '../statistics.js';
import { nearestHundredth } from '../time/hundredths.js';
import type { Estimate } from './estimate.js';
import { deficitRule, type Recovery, recoveryOf } from './recovery.js';

/** What {@link impliedTime} knows of the swimmer. */
export interface ImpliedTimeOptions {
  /** The swimmer's reserve, in metres, from a fit over the same swimmer's trials. */
  readonly reserve: number;
  /** How it comes back; no default, since the published forms disagree. */
  readonly recovery: Recovery;
}

/**
 * What continuous time a broken swim implies, if it left nothing: the critical speed at which the reserve
 * would just have run out at the last wall, and the time that speed gives for the same distance.
 *
 * It asks for the swimmer's reserve (see {@link fitCriticalSpeed}) and a form of recovery, by name. The forms are
 * contested; lay them side by side, and beside {@link projectBrokenSwim}. The linear form gives rest its full
 * price: the continuous time is then the time on the clock, rests included.
 *
 * @param set - The broken swim as timed: distances in the pool's unit, times in hundredths of a second.
 * @param options - The reserve in metres, and the form of recovery by name.
 * @returns The estimate, in hundredths of a second; its range is null, for nobody has measured one.
 * @throws {@link PacingError} `set-incomplete` where the rest is not known; `reserve-does-not-fit` where no
 *   critical speed uses the reserve up; `unknown-choice`, `out-of-range`; the codes of {@link readSet}.
 * @example
 * const piece = splitsFromLaps(50, [2900, 3100].map(hundredths));
 * const broken = { pool: SCM, repDistance: 100, reps: Array(4).fill(piece), rest: hundredths(1000) };
 * const linear = impliedTime(broken, { reserve: 20, recovery: { form: 'linear' } });
 * formatTime(linear.time); // => '4:30.00'
 * @see Morton and Billat 2004, Eur. J. Appl. Physiol. 91; Skiba et al. 2012, Med. Sci. Sports Exerc. 44(8).
 */
export function impliedTime(set: SwumSet, options: ImpliedTimeOptions): Estimate {
  const pieces = setOf(set);
  const { reserve, recovery: wanted } = fieldsOf(options, 'The options');
  const recovery = recoveryOf(wanted);
  const full = numberOf(reserve, 'The reserve', { min: 0.1, max: 1000 });
  const metres = convertDistance(pieces.repDistance, pieces.pool.unit, 'm');
  const swims = pieces.reps.map((rep) => {
    const { time } = finishOf(rep);
    return { seconds: time / 100, rest: (restAfter(pieces, time) ?? Number.NaN) / 100 };
  });
  if (swims.length > 1 && swims.some(({ rest }) => Number.isNaN(rest))) {
    const message = 'The rest between reps is not known; give a send-off or a rest.';
    throw new PacingError('set-incomplete', message, set);
  }

  /** The deficit at the last wall, were this the critical speed. */
  const deficitAt = (critical: number): number => {
    const rule = deficitRule(recovery, critical, full);
    return swims.reduce((deficit, { seconds, rest }, i) => {
      const spent = rule.after(deficit, metres / seconds, seconds);
      return i === swims.length - 1 ? spent : rule.after(spent, 0, Math.max(0, rest));
    }, 0);
  };
  // The faster the critical speed, the smaller the deficit: halve the interval until it is found.
  let [slow, fast] = [0.01, greatestOf(swims.map(({ seconds }) => metres / seconds))];
  if (deficitAt(slow) < full) {
    const message = `Even from rest these swims do not use up ${full} m of reserve; check the reserve or the times.`;
    throw new PacingError('reserve-does-not-fit', message, set);
  }
  for (let i = 0; i < 60; i++) {
    const middle = (slow + fast) / 2;
    if (deficitAt(middle) > full) slow = middle;
    else fast = middle;
  }
  const distance = metres * swims.length;
  return {
    time: nearestHundredth((100 * (distance - full)) / fast),
    range: null,
    method: `reserve-${recovery.form}`,
    assumptions: [
      `A reserve of ${full} m was used up exactly at the last wall.`,
      `It came back in the rests by the ${recovery.form} form, still at the wall.`,
    ],
    cautions: cautionsWhere(
      [
        true,
        'contested',
        'Published forms of recovery disagree and were not made for swimming: compare all three.',
      ],
      [true, 'no-range', 'Nobody has measured how far off such a time is.'],
    ),
  };
}
