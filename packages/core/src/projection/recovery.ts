import { choiceOf, fieldsOf, numberOf } from '../check.js';
import { PacingError } from '../errors.js';

/**
 * How the reserve comes back below critical speed; three published forms, which disagree.
 *
 * - `linear`: as fast as it is spent, metre for metre (Morton and Billat 2004).
 * - `differential`: the emptier, the faster, in proportion to what is missing (Skiba, Clarke and
 *   others, 2015 and 2021).
 * - `integral`: what was spent fades with a time constant, during work too (Skiba et al. 2012). `tau`
 *   is that constant in seconds; it has no default, since no value holds even for one swimmer.
 */
export type Recovery =
  | { readonly form: 'linear' | 'differential' }
  | { readonly form: 'integral'; readonly tau: number };

/** How much of the reserve is missing, as time passes at one speed; all in metres and seconds. */
export interface DeficitRule {
  /** The deficit after a stretch at one speed; may pass the reserve, and is then not swimmable. */
  after(deficit: number, speed: number, seconds: number): number;
  /** After how many seconds at one speed the deficit reaches the reserve; Infinity for never. */
  untilEmpty(deficit: number, speed: number): number;
}

/** A recovery out of plain data. */
export function recoveryOf(value: unknown): Recovery {
  if (value === undefined) {
    const message =
      'Choose how the reserve comes back: linear, differential or integral; they disagree.';
    throw new PacingError('unknown-choice', message, value);
  }
  const { form: named, tau } = fieldsOf(value, 'The recovery');
  const form = choiceOf(named, ['linear', 'differential', 'integral'], 'The form of recovery');
  if (form !== 'integral') return { form };
  return { form, tau: numberOf(tau, 'The time constant tau, in seconds,', { min: 1, max: 1e6 }) };
}

/** A recovery as a rule for the deficit. `critical` in metres per second, `reserve` in metres. */
export function deficitRule(recovery: Recovery, critical: number, reserve: number): DeficitRule {
  switch (recovery.form) {
    case 'linear':
      return { after: linear, untilEmpty: spending };
    case 'differential':
      return {
        after: (deficit, speed, seconds) =>
          speed >= critical
            ? linear(deficit, speed, seconds)
            : deficit * Math.exp((-(critical - speed) * seconds) / reserve),
        untilEmpty: spending,
      };
    case 'integral':
      return integral(recovery.tau);
  }

  function linear(deficit: number, speed: number, seconds: number): number {
    return Math.max(0, deficit + (speed - critical) * seconds);
  }

  function spending(deficit: number, speed: number): number {
    return speed > critical ? Math.max(0, (reserve - deficit) / (speed - critical)) : Infinity;
  }

  function integral(constant: number): DeficitRule {
    const limit = (speed: number): number => Math.max(0, speed - critical) * constant;
    return {
      after: (deficit, speed, seconds) =>
        limit(speed) + (deficit - limit(speed)) * Math.exp(-seconds / constant),
      untilEmpty: (deficit, speed) => {
        if (deficit >= reserve) return 0;
        const share = (limit(speed) - reserve) / (limit(speed) - deficit);
        return limit(speed) > reserve ? -constant * Math.log(share) : Infinity;
      },
    };
  }
}
