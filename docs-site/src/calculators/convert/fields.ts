import { type Pool, TURN_GAINS } from 'backhalf';
import type { Shape } from '~/ui/address';
import { type PoolFields, poolShape } from '~/ui/pool-text';

type Side = 'from' | 'to';

export interface ConvertFields extends Readonly<Record<string, string>> {
  /** `time` of a swim, `pace` per 100, `send-off` or `distance`. */
  readonly what: string;
  readonly 'from-pool': string;
  readonly 'from-length': string;
  readonly 'from-unit': string;
  readonly 'to-pool': string;
  readonly 'to-length': string;
  readonly 'to-unit': string;
  readonly stroke: string;
  readonly sex: string;
  readonly distance: string;
  readonly time: string;
  readonly pace: string;
  /** The send-off, the distance it is for, and which way it is rounded. */
  readonly 'send-off': string;
  readonly rep: string;
  readonly round: string;
  /** A distance to convert, whatever is swum over it. */
  readonly stretch: string;
  /** `none`, the key of a published gain per turn, or `own`, for which `own` tells. */
  readonly gain: string;
  readonly own: string;
  /** Base times for points; both may be empty. */
  readonly 'from-base': string;
  readonly 'to-base': string;
}

export const shape: Shape<ConvertFields> = {
  what: ['time', 'pace', 'send-off', 'distance'],
  'from-pool': poolShape.pool,
  'from-length': poolShape.length,
  'from-unit': poolShape.unit,
  'to-pool': poolShape.pool,
  'to-length': poolShape.length,
  'to-unit': poolShape.unit,
  stroke: ['free', 'back', 'breast', 'fly', 'medley'],
  sex: ['W', 'M'],
  distance: 'any',
  time: 'any',
  pace: 'any',
  'send-off': 'any',
  rep: 'any',
  round: ['up', 'nearest', 'down'],
  stretch: 'any',
  gain: ['none', ...TURN_GAINS.map(({ key }) => key), 'own'],
  own: 'any',
  'from-base': 'any',
  'to-base': 'any',
};

/** The fields of one of the two pools. */
export const poolFields = (fields: ConvertFields, side: Side): PoolFields => ({
  pool: fields[`${side}-pool`],
  length: fields[`${side}-length`],
  unit: fields[`${side}-unit`],
});

/** A pool as it is said: `a 25 yd pool`. */
export const poolText = ({ length, unit }: Pool): string =>
  `a ${Math.round(length * 100) / 100} ${unit} pool`;
