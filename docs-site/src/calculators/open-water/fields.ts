import type { Shape } from '~/ui/address';

/** More legs than this are laps of one course. */
export const mostLegs = 8;

const parts = ['distance', 'current', 'size', 'cross'] as const;

/** The fields of a leg, numbered from 1: how long, which way the water runs, how fast, and across. */
type LegField = `${(typeof parts)[number]}-${number}`;

export interface WaterFields extends Readonly<Record<string, string>> {
  /** `plan` a swim, or `read` the current out of two times. */
  readonly job: string;
  readonly legs: string;
  readonly laps: string;
  /** What the plan starts from: `pace`, `speed` or `goal`. */
  readonly start: string;
  readonly pace: string;
  readonly speed: string;
  readonly goal: string;
  /** `even` effort, or the second half `faster`, for which `by` tells how much. */
  readonly split: string;
  readonly by: string;
  /** `none`, `drafting` or `wetsuit`. */
  readonly effect: string;
  /** To read a current: the distance one way, the time out, the time back. */
  readonly length: string;
  readonly out: string;
  readonly back: string;
}

const numbers = Array.from({ length: mostLegs }, (_, i) => i + 1);

const legShape = Object.fromEntries(
  numbers.flatMap((n) =>
    parts.map((part) => [
      `${part}-${n}`,
      part === 'current' ? (['still', 'with', 'against'] as const) : ('any' as const),
    ]),
  ),
);

export const shape: Shape<WaterFields> = {
  job: ['plan', 'read'],
  legs: numbers.map(String),
  laps: 'any',
  start: ['pace', 'speed', 'goal'],
  pace: 'any',
  speed: 'any',
  goal: 'any',
  split: ['even', 'faster'],
  by: 'any',
  effect: ['none', 'drafting', 'wetsuit'],
  length: 'any',
  out: 'any',
  back: 'any',
  ...legShape,
};

/** The text of a field of a leg. */
export const legField = (fields: WaterFields, name: LegField): string => fields[name] ?? '';

/** A leg with nothing typed in it yet. */
export const emptyLegs = Object.fromEntries(
  numbers.flatMap((n) => parts.map((part) => [`${part}-${n}`, part === 'current' ? 'still' : ''])),
);
