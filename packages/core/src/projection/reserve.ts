import { type Caution, cautionsWhere } from '../caution.js';
import { fieldsOf, numberOf } from '../check.js';
import { convertDistance } from '../course/convert-distance.js';
import { poolOf } from '../course/pool.js';
import { PacingError } from '../errors.js';
import type { PlannedSet } from '../sets/planned-set.js';
import type { SetPaces } from '../sets/set-paces.js';
import { restAfter, type SwumSet, setOf } from '../sets/swum-set.js';
import { timelineOf } from '../sets/timeline.js';
import { finishOf } from '../splits/splits.js';
import { deficitRule, type Recovery, recoveryOf } from './recovery.js';

/** What {@link reserveThrough} needs beside set and model. */
export interface ReserveOptions extends SetPaces {
  /** How the reserve comes back; it has no default, since the published forms disagree. */
  readonly recovery: Recovery;
  /** Speed during the rests, in metres per second; 0, still at the wall, unless given. */
  readonly restSpeed?: number;
}

/** The reserve after one swim of a set, and after the rest that follows. */
export interface ReserveStep {
  /** The swim's number, a count from 1. */
  readonly rep: number;
  /** Metres left after the swim; below zero is not swimmable as modelled. */
  readonly afterSwim: number;
  /** Metres left after the rest. */
  readonly afterRest: number;
}

/** The reserve through a set, by one form of recovery. */
export interface ReserveTrace {
  /** The form of recovery it rests on; another form tells another story. */
  readonly form: Recovery['form'];
  /** One step for each swim, up to the one in which the reserve runs out. */
  readonly steps: readonly ReserveStep[];
  /** The least that was left, in metres. */
  readonly lowest: number;
  /** Where the reserve runs out: the swim (a count from 1), and how far into it in metres; or null. */
  readonly runsOut: { readonly rep: number; readonly distance: number } | null;
  /** No finer than this: below zero is beyond, under a quarter of the reserve borderline. */
  readonly verdict: 'comfortable' | 'borderline' | 'beyond';
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
  /** What to know before trusting it. */
  readonly cautions: readonly Caution[];
}

const BORDERLINE = 0.25; // of the reserve; a choice of ours

/**
 * Follows the reserve of a fitted critical speed through a planned or swum set: what each swim spends
 * above critical speed, and what each rest gives back.
 *
 * The three published forms of recovery come from running and cycling and disagree; one set can be easy
 * by one and impossible by another. In swimmers the integral form's time constant did not even hold
 * from one session to the next (Raimundo et al. 2022). So choose a form by name, lay all three side by
 * side, and read no more than the verdict out of them. A broken swim that left nothing is read by
 * {@link impliedTime}.
 *
 * @param set - A planned set (see {@link parseSet}) or a swum one; distances in the pool's unit.
 * @param model - Critical speed and reserve, in metres per second and metres, as {@link fitCriticalSpeed} gives them.
 * @param options - `recovery` by name; `restSpeed` in metres per second; for a planned set its pool and
 *   paces in hundredths of a second per 100, see {@link setTotals}. Metres where no pool is given.
 * @returns The reserve after each swim and rest, in metres.
 * @throws {@link PacingError} `unknown-choice` for no recovery or another form; `out-of-range` for a
 *   model, time constant or speed out of reason; `set-incomplete` where a time or rest is not known; the
 *   codes of {@link setTotals} or {@link readSet}.
 * @example
 * const model = { speed: 1.3, reserve: 20 };
 * const set = parseSet('10 x 100 in 1:12 on 1:20');
 * const trace = reserveThrough(set, model, { recovery: { form: 'differential' } });
 * trace.steps.at(-1)?.afterSwim.toFixed(2); // => '4.30'
 * reserveThrough(set, model, { recovery: { form: 'integral', tau: 300 } }).runsOut?.rep; // => 7
 * @see Morton and Billat 2004, Eur. J. Appl. Physiol. 91; Skiba et al. 2012, Med. Sci. Sports Exerc. 44(8);
 *   Skiba and Clarke 2021, Int. J. Sports Physiol. Perform. 16(11); Raimundo et al. 2022, Front. Physiol. 13.
 */
export function reserveThrough(
  set: PlannedSet | SwumSet,
  model: {
    /** The critical speed, in metres per second. */
    readonly speed: number;
    /** The reserve on top of it, in metres. */
    readonly reserve: number;
  },
  options: ReserveOptions,
): ReserveTrace {
  const { speed, reserve } = fieldsOf(model, 'The critical speed');
  const critical = numberOf(speed, 'The critical speed', { min: 0.1, max: 3 });
  const full = numberOf(reserve, 'The reserve', { min: 0.1, max: 1000 });
  const { recovery: wanted, restSpeed = 0, ...paces } = fieldsOf(options, 'The options');
  const recovery = recoveryOf(wanted);
  const { form } = recovery;
  const rule = deficitRule(recovery, critical, full);
  const resting = numberOf(restSpeed, 'The speed during rests', { min: 0, max: critical });

  const steps: ReserveStep[] = [];
  let deficit = 0;
  let runsOut: ReserveTrace['runsOut'] = null;
  for (const { metres, swim, rest } of swimsOf(set, paces)) {
    const pace = metres / swim;
    const empty = rule.untilEmpty(deficit, pace);
    const spent = rule.after(deficit, pace, swim);
    deficit = rule.after(spent, resting, Math.max(0, rest));
    steps.push({ rep: steps.length + 1, afterSwim: full - spent, afterRest: full - deficit });
    if (spent > full) {
      runsOut = { rep: steps.length, distance: empty * pace };
      break;
    }
  }
  const lowest = steps.reduce((least, { afterSwim }) => Math.min(least, afterSwim), full);
  return {
    form,
    steps,
    lowest,
    runsOut,
    verdict: runsOut ? 'beyond' : lowest < BORDERLINE * full ? 'borderline' : 'comfortable',
    assumptions: [
      `The reserve was full at the first start, and comes back by the ${form} form.`,
      resting === 0
        ? 'Rests are taken still at the wall.'
        : `Rests are swum at ${resting} metres per second.`,
    ],
    cautions: cautionsWhere([
      true,
      'contested',
      'Published forms of recovery disagree and were not made for swimming: compare all three, and trust the athlete first.',
    ]),
  };
}

interface TimedSwim {
  readonly metres: number;
  /** Seconds. */
  readonly swim: number;
  readonly rest: number;
}

/** Each swim of either kind of set, in metres and seconds. */
function swimsOf(set: unknown, options: Record<string, unknown>): readonly TimedSwim[] {
  if ('reps' in fieldsOf(set, 'The set')) return repsOf(setOf(set));
  const { pool } = options;
  const unit = pool === undefined ? 'm' : poolOf(pool).unit;
  return timelineOf(set, options).map(({ distance, swim, rest }) => ({
    metres: convertDistance(distance, unit, 'm'),
    swim: swim / 100,
    rest: rest / 100,
  }));
}

function repsOf(set: SwumSet): readonly TimedSwim[] {
  const metres = convertDistance(set.repDistance, set.pool.unit, 'm');
  return set.reps.map((rep) => {
    const { time } = finishOf(rep);
    const rest = restAfter(set, time);
    if (rest !== null) return { metres, swim: time / 100, rest: rest / 100 };
    const message = 'The rest between reps is not known; give a send-off or a rest.';
    throw new PacingError('set-incomplete', message, set);
  });
}
