import type { Shape } from '~/ui/address';
import { type PoolFields, poolShape } from '~/ui/pool-text';

export interface DeckFields extends PoolFields, Readonly<Record<string, string>> {
  /** One swimmer a line: name, expected rep time and, where there is more than one, lane. */
  readonly swimmers: string;
  readonly reps: string;
  /** The distance of a rep. */
  readonly distance: string;
  readonly 'send-off': string;
  readonly stagger: string;
  /** Which marks are touched in: `finish`, or `halfway-and-finish`. */
  readonly marks: string;
  /** The buttons: `one` for all, one for each of the `kinds` of mark, or one for each of the `lanes`. */
  readonly buttons: string;
  /** `ready` to start, `timing`, or `over`. */
  readonly phase: string;
  /** When the first swimmer left, in milliseconds since 1970; empty where nobody has. */
  readonly started: string;
  /** The touches in the order of tapping. */
  readonly touches: string;
}

export const shape: Shape<DeckFields> = {
  ...poolShape,
  swimmers: 'any',
  reps: 'any',
  distance: 'any',
  'send-off': 'any',
  stagger: 'any',
  marks: ['halfway-and-finish', 'finish'],
  buttons: ['one', 'kinds', 'lanes'],
  phase: ['ready', 'timing', 'over'],
  started: 'any',
  touches: 'any',
};
