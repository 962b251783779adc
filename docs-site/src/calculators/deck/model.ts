import {
  assignTouches,
  type DeckPlan,
  type DeckReading,
  type Hundredths,
  hundredths,
  isPacingError,
  type Pool,
} from 'backhalf';
import { queryOf } from '~/ui/address';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import { readPool } from '~/ui/pool-text';
import { readSwimmers, type SwimmersText } from '~/ui/swimmers-text';
import { readTimeText } from '~/ui/time-text';
import type { DeckFields } from './fields';
import { readTaps, type Tap, touchOf } from './touches-text';

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: DeckFields): string => `/calculators/deck/?${queryOf(fields)}`;

export interface DeckView {
  readonly pool: Pool | null;
  readonly swimmers: SwimmersText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: Readonly<Record<string, readonly string[]>>;
  /** None while something is still wrong. */
  readonly plan: DeckPlan | null;
  readonly taps: readonly Tap[];
  /** The lanes that have swimmers, in order. */
  readonly lanes: readonly number[];
  /** None while there is no plan, or where the touches do not fit it. */
  readonly reading: DeckReading | null;
  /** Why the touches do not fit the plan, where they do not. */
  readonly misfit: string | null;
}

/** The send-offs and staggers that make sense for a rep. */
export const sendOffWindow = (distance: number) => {
  const { from, to } = plausibleTimes(distance);
  return { from, to: hundredths(2 * to) };
};
export const staggerWindow = { from: hundredths(0), to: hundredths(12_000) };

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: DeckFields): DeckView {
  const { pool, error: poolError } = readPool(fields);
  const distance = readCountText(fields.distance, 'Rep distance', { least: 10, most: 5000 });
  const reps = readCountText(fields.reps, 'Reps', { most: 100 });
  const swimmers = readSwimmers(fields.swimmers, distance.count ?? 100);
  const window = sendOffWindow(distance.count ?? 100);
  const sendOff = readTimeText(fields['send-off'], 'Send-off', window);
  const stagger = readTimeText(fields.stagger, 'Stagger', staggerWindow);
  const { taps, unread } = readTaps(fields.touches);
  const lanes = [...new Set(swimmers.swimmers.map(({ lane = 1 }) => lane))].sort((a, b) => a - b);

  const one = (error: string | null) => (error === null ? [] : [error]);
  const errors = {
    length: one(poolError),
    swimmers: swimmers.errors,
    distance: one(distance.error),
    reps: one(reps.error),
    'send-off': one(sendOff.error),
    stagger: one(stagger.error),
    touches: unread.map(
      (word) => `The address holds “${word.slice(0, 20)}” for a touch; it was left out.`,
    ),
  };
  const seen = { pool, swimmers, taps, lanes, misfit: null };
  const wrong = Object.entries(errors).some(([name, all]) => name !== 'touches' && all.length > 0);
  if (wrong || pool === null || distance.count === null || reps.count === null) {
    return { ...seen, errors, plan: null, reading: null };
  }
  const plan: DeckPlan = {
    swimmers: swimmers.swimmers.map(({ time, ...who }) => ({ ...who, repTime: time })),
    reps: reps.count,
    repDistance: distance.count,
    sendOff: sendOff.time as Hundredths, // no error, so a time
    stagger: stagger.time as Hundredths,
    marks: fields.marks === 'finish' ? 'finish' : 'halfway-and-finish',
  };
  const alike = attempt(() => rehearse(plan, fields, lanes)).error;
  if (alike !== undefined) {
    return { ...seen, errors: { ...errors, swimmers: [alike] }, plan: null, reading: null };
  }
  const known = fields.phase === 'timing' ? 'past' : 'all';
  const touches = taps.flatMap((tap) => touchOf(tap) ?? []);
  const { value: reading = null, error } = attempt(() => assignTouches(plan, touches, { known }));
  // Touches of another set, timed with other buttons, must not keep a new one from starting.
  const misfit = error === undefined ? null : `The touches do not fit these swimmers. ${error}`;
  return { ...seen, errors, plan, reading, misfit };
}

function attempt<T>(act: () => T): { readonly value?: T; readonly error?: string } {
  try {
    return { value: act() };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return { error: error.message };
  }
}

/** Reads one touch, so that swimmers whom no time can tell apart are found before the start. */
function rehearse(plan: DeckPlan, { buttons }: DeckFields, lanes: readonly number[]): void {
  const [lane = 1] = lanes;
  assignTouches(plan, [{ time: hundredths(1), ...(buttons === 'lanes' && { lane }) }]);
}
