import {
  isPacingError,
  type Pool,
  type Splits,
  splitsFromCumulative,
  splitsFromLaps,
} from 'backhalf';
import { readTimesText, type TimesText } from '~/ui/times-text';

/** How the times of a swim stand in a field. */
export interface SwimFields {
  readonly times: string;
  /** How many lengths lie between two times, a count. */
  readonly every: string;
  /** `laps`, each by itself, or `running` from the start. */
  readonly kind: string;
}

export const swimShape = {
  times: 'any',
  every: ['1', '2', '4'],
  kind: ['laps', 'running'],
} as const;

/** A swim as typed, and what it came to. */
export interface SwimText {
  readonly reading: TimesText;
  /** None while it is empty or something in it is wrong. */
  readonly swim: Splits | null;
  readonly errors: readonly string[];
}

const most = 1000; // ten kilometres in a short pool, and more
const longest = 50_000; // characters read of what was pasted

/** Reads a swim's times for a pool; an empty field is no error. */
export function readSwim({ times, every, kind }: SwimFields, pool: Pool | null): SwimText {
  const running = kind === 'running';
  const apart = (pool?.length ?? 25) * Number(every);
  const reading = readTimesText(times.slice(0, longest), {
    label: running ? 'Time' : 'Lap',
    every: apart,
    running,
  });
  const unread = reading.times.flatMap(({ error }) => error ?? []);
  const read = reading.times.flatMap(({ time }) => time ?? []);
  const not = (errors: readonly string[]): SwimText => ({ reading, swim: null, errors });
  if (read.length > most) {
    return not([`These are ${read.length} times; one swim has ${most} at most.`]);
  }
  if (unread.length > 0 || read.length === 0 || pool === null) return not(unread);
  try {
    const swim = running ? splitsFromCumulative(apart, read) : splitsFromLaps(apart, read);
    return { reading, swim, errors: [] };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return not([error.message]);
  }
}
