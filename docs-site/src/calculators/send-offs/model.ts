import { type Hundredths, hundredths, isPacingError } from 'backhalf';
import { queryOf } from '~/ui/address';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readSwimmers, type SwimmersText } from '~/ui/swimmers-text';
import { readTimeText } from '~/ui/time-text';
import type { SendOffFields } from './fields';
import { type LaneResult, laneResult } from './lane';
import { type SquadResult, squadResult } from './squad';

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: SendOffFields): string =>
  `/calculators/send-offs/?${queryOf(fields)}`;

/** Rests and gaps between swimmers that make sense. */
export const restWindow = { from: hundredths(0), to: hundredths(60_000) };
export const staggerWindow = { from: hundredths(0), to: hundredths(6000) };

/** What both kinds of answer are made from. */
export interface SetAsked {
  readonly distance: number;
  readonly rest: Hundredths;
  readonly reps: number;
  readonly stagger: Hundredths;
}

export interface SendOffView {
  readonly squad: SwimmersText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: Readonly<Record<string, readonly string[]>>;
  /** For one lane; none while something is still wrong. */
  readonly lane: LaneResult | null;
  /** For a squad; none while something is still wrong. */
  readonly plan: SquadResult | null;
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: SendOffFields): SendOffView {
  const ofSquad = fields.what === 'squad';
  const distance = readCountText(fields.distance, 'Rep distance', { least: 10, most: 5000 });
  const squad = readSwimmers(fields.squad, 100);
  const swim = readTimeText(fields.swim, 'Time of a rep', plausibleTimes(distance.count ?? 100));
  const swimmers = readCountText(fields.swimmers, 'Swimmers in the lane', { most: 12 });
  const lanes = readCountText(fields.lanes, 'Lanes', { most: 20 });
  const cap = readCountText(fields.cap, 'Most in a lane', { most: 100 });
  const rest = readTimeText(fields.rest, 'Rest wanted', restWindow);
  const reps = readCountText(fields.reps, 'Reps', { most: 200 });
  const stagger = readTimeText(fields.stagger, 'Time between swimmers', staggerWindow);

  const one = (error: string | null) => (error === null ? [] : [error]);
  const mine = ofSquad
    ? { squad: squad.errors, lanes: one(lanes.error), cap: one(cap.error) }
    : { swim: one(swim.error), swimmers: one(swimmers.error) };
  const errors: Record<string, readonly string[]> = {
    ...mine,
    distance: one(distance.error),
    rest: one(rest.error),
    reps: one(reps.error),
    stagger: one(stagger.error),
  };
  const wrong = Object.entries(errors).filter(([, messages]) => messages.length > 0);
  const none = { squad, errors: Object.fromEntries(wrong), lane: null, plan: null };
  if (wrong.length > 0) return none;
  if (distance.count === null || rest.time === null) return none;
  if (reps.count === null || stagger.time === null) return none;

  const asked: SetAsked = {
    distance: distance.count,
    rest: rest.time,
    reps: reps.count,
    stagger: stagger.time,
  };
  try {
    if (ofSquad) {
      const room = { lanes: lanes.count ?? 1, maxPerLane: cap.count ?? 1 };
      const swimmers = squad.swimmers.map(({ name, time }) => ({ name, pace: time }));
      return { ...none, plan: squadResult(asked, swimmers, room) };
    }
    if (swim.time === null || swimmers.count === null) return none;
    return { ...none, lane: laneResult(asked, swim.time, swimmers.count) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    const field = error.code === 'too-few-lanes' ? 'lanes' : ofSquad ? 'squad' : 'swim';
    return { ...none, errors: { [field]: [error.message] } };
  }
}
