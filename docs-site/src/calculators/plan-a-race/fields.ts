import { type Hundredths, hundredths } from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { type PoolFields, poolShape } from '~/ui/pool-text';
import { swimShape } from './swim-text';

export interface PlanFields extends PoolFields, Readonly<Record<string, string>> {
  readonly distance: string;
  readonly goal: string;
  /** `even`, `halves` that differ, the finals of women (`W`) or men (`M`), or the swimmer's `own`. */
  readonly shape: string;
  /** By how much the second half is `faster` or `slower`. */
  readonly way: string;
  readonly gap: string;
  /** What dive and finish take off the first and the last length; may be empty. */
  readonly credit: string;
  readonly lift: string;
  /** Lengths to a row of the card. */
  readonly every: string;
  /** The earlier swim to copy. */
  readonly own: string;
  readonly ownEvery: string;
  readonly ownKind: string;
  /** The swim that followed; may be empty. */
  readonly swum: string;
  readonly swumEvery: string;
  readonly swumKind: string;
}

/** Lengths to a row of the card. */
export const strides = [1, 2, 4, 8, 16, 32, 64, 128];

export const shape: Shape<PlanFields> = {
  ...poolShape,
  distance: 'any',
  goal: 'any',
  shape: ['even', 'halves', 'W', 'M', 'own'],
  way: ['faster', 'slower'],
  gap: 'any',
  credit: 'any',
  lift: 'any',
  every: strides.map(String),
  own: 'any',
  ownEvery: swimShape.every,
  ownKind: swimShape.kind,
  swum: 'any',
  swumEvery: swimShape.every,
  swumKind: swimShape.kind,
};

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: PlanFields): string =>
  `/calculators/plan-a-race/?${queryOf(fields)}`;

export const creditLabel = 'Dive: first length faster by';
export const liftLabel = 'Finish: last length faster by';
export const gapLabel = 'Difference of the halves';

/** What a dive or a finish can be worth; readings beyond are not offered. */
export const edgeTimes = { from: hundredths(0), to: hundredths(1000) };

/** By how much halves can differ: a tenth of the race is more than anybody plans. */
export const smallTimes = (goal: Hundredths | null) => ({
  from: hundredths(0),
  to: hundredths(Math.max(1000, Math.round((goal ?? 0) / 10))),
});
