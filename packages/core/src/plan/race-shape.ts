import { choiceOf, fieldsOf } from '../check.js';
import { PacingError } from '../errors.js';
import { show } from '../show.js';
import { type Splits, splitsFromLaps, splitsOf } from '../splits/splits.js';
import { differenceOf, type Hundredths, hundredths } from '../time/hundredths.js';
import { type ChampionshipShape, championshipShape } from './championship-shapes.js';

/**
 * How a race is to be swum.
 *
 * - `even`: every length in the same time.
 * - `secondHalf`: the second half less the first (a difference, not the half's own time), in hundredths of a
 *   second; below zero is a negative split by that much; at most a quarter of the goal. Each half is even in itself.
 * - `profile`: as an earlier swim was, lap for lap, scaled to the goal; it may be of another distance.
 * - `championship`: as Olympic finalists did on the mean, women (`W`) or men (`M`).
 */
export type RaceShape =
  | 'even'
  | { readonly secondHalf: Hundredths }
  | { readonly profile: Splits }
  | { readonly championship: 'W' | 'M' };

/** A shape that was read; a profile or a championship shape as the swim to copy. */
export type ReadShape =
  | { readonly kind: 'even' }
  | { readonly kind: 'halves'; readonly secondHalf: Hundredths }
  | { readonly kind: 'profile'; readonly swim: Splits }
  | ({ readonly kind: 'championship'; readonly swim: Splits } & Omit<ChampionshipShape, 'laps'>);

/** A shape out of plain data, for a race of so many metres. */
export function shapeOf(value: unknown, metres: number): ReadShape {
  if (value === 'even') return { kind: 'even' };
  const { secondHalf, profile, championship } =
    typeof value === 'object' ? fieldsOf(value, 'The shape') : {};
  const given = [secondHalf, profile, championship].filter((field) => field !== undefined);
  if (given.length !== 1) {
    const message = `The shape must be "even" or one of secondHalf, profile and championship, not ${show(value)}.`;
    throw new PacingError('unknown-choice', message, value);
  }
  if (profile !== undefined) return { kind: 'profile', swim: splitsOf(profile, 'The profile') };
  if (secondHalf !== undefined) {
    return { kind: 'halves', secondHalf: differenceOf(secondHalf, 'The second half') };
  }
  const sex = choiceOf(championship, ['W', 'M'], 'The championship');
  const { laps, ...measured } = championshipShape(sex, metres);
  return { kind: 'championship', swim: splitsFromLaps(50, laps.map(hundredths)), ...measured };
}
