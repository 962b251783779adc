// A library of someone else's, built on this one: every exported type is inferred, so that its
// declaration file must be able to name what it got.
import {
  type Hundredths,
  hundredths,
  isPacingError,
  type PacingErrorCode,
  parseTime,
  projectFromSet,
  readSet,
  SCM,
  type Splits,
  safeParseTime,
  splitsFromLaps,
} from 'backhalf';
import { readSplitTable } from 'backhalf/tables';

export const rep = splitsFromLaps(50, [parseTime('31.5'), parseTime('33.5')]);
export const set = { pool: SCM, repDistance: 100, reps: [rep], sendOff: hundredths(9000) };
export const reading = readSet(set);
export const { honestPace, cautions } = reading;
export const race = (distance: number) => ({ ...projectFromSet(set, { distance }), distance });
export const table = (text: string) => readSplitTable(text).swims.map(({ splits }) => splits);

// The brand, taken apart and put together again.
export const best = { time: hundredths(6500) };
export const merged = Object.assign({ name: 'Ada' }, best);
export type Mutable<T> = { -readonly [K in keyof T]: T[K] };
export const copy = (splits: Splits): Mutable<Splits> => ({ ...splits });
export const fastest = (times: readonly Hundredths[]) =>
  [...times].sort((a, b) => a - b)[0] ?? null;
export const byCode: Partial<Record<PacingErrorCode, string>> = { 'not-a-time': 'write a time' };

// Errors: the code is what a program branches on.
export function told(text: string) {
  const result = safeParseTime(text);
  return result.ok ? result.value : result.error.code;
}
export const codeOf = (error: unknown) => (isPacingError(error) ? error.code : null);
