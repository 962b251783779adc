import type { Shape } from '~/ui/address';

export interface SendOffFields extends Readonly<Record<string, string>> {
  /** What is wanted: the send-off of one `lane`, or a `squad` put into lanes. */
  readonly what: string;
  /** The distance of a rep, in the pool's unit. */
  readonly distance: string;
  /** Rest wanted after each rep. */
  readonly rest: string;
  readonly reps: string;
  /** Time between two swimmers of a lane. */
  readonly stagger: string;
  /** The time of a rep; for one lane. */
  readonly swim: string;
  /** How many swim in the lane; for one lane. */
  readonly swimmers: string;
  /** Name and pace per 100, one swimmer a line. */
  readonly squad: string;
  readonly lanes: string;
  /** How many a lane holds at most. */
  readonly cap: string;
}

export const shape: Shape<SendOffFields> = {
  what: ['lane', 'squad'],
  distance: 'any',
  rest: 'any',
  reps: 'any',
  stagger: 'any',
  swim: 'any',
  swimmers: 'any',
  squad: 'any',
  lanes: 'any',
  cap: 'any',
};
