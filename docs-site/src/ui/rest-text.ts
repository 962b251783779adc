import { formatTime, type Hundredths, hundredths, type Splits } from 'backhalf';
import { plausibleTimes } from './plausible';
import { readTimeText } from './time-text';

/** The fields that tell the rest between reps. */
export interface RestFields {
  /** What is known: `sendOff`, `rest`, `total` (the time of the whole set) or `nothing`. */
  readonly known: string;
  /** The time that tells. */
  readonly rest: string;
}

export const restShape = {
  known: ['sendOff', 'rest', 'total', 'nothing'],
  rest: 'any',
} as const;

export interface RestText {
  /** What a swum set takes. */
  readonly given: { readonly sendOff?: Hundredths; readonly rest?: Hundredths };
  readonly error: string | null;
}

const labels: Readonly<Record<string, string>> = {
  sendOff: 'Send-off',
  rest: 'Rest after each rep',
  total: 'Time of the whole set',
};

/** The label of the field that tells the rest. */
export const restLabel = (known: string): string => labels[known] ?? '';

/** The rest that the fields tell, for reps of a distance, or what would do. */
export function readRest(
  { known, rest }: RestFields,
  distance: number,
  reps: readonly Splits[],
): RestText {
  if (known === 'nothing') return { given: {}, error: null };
  const window = restWindow(known, distance, reps.length);
  const { time, error } = readTimeText(rest, restLabel(known), window);
  if (time === null) return { given: {}, error };
  if (known === 'sendOff') return { given: { sendOff: time }, error: null };
  if (known === 'rest') return { given: { rest: time }, error: null };

  // From the first start to the last touch: what was not swum was rest, shared by the gaps.
  const swum = reps.reduce((sum, { marks }) => sum + (marks.at(-1)?.time ?? 0), 0);
  const gaps = Math.max(reps.length - 1, 1);
  if (time >= swum)
    return { given: { rest: hundredths(Math.round((time - swum) / gaps)) }, error: null };
  const message = `The reps add up to ${formatTime(hundredths(swum))}, but the whole set says ${formatTime(time)}. Change one of them.`;
  return { given: {}, error: message };
}

/** The times that make sense for what tells the rest. */
export function restWindow(known: string, distance: number, reps: number) {
  const { from, to } = plausibleTimes(distance);
  if (known === 'sendOff') return { from, to: hundredths(to * 2) };
  if (known === 'rest') return { from: hundredths(0), to: hundredths(60_000) };
  return { from: hundredths(from * Math.max(reps, 1)), to: hundredths(to * 2 * Math.max(reps, 1)) };
}
