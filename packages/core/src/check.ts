import { PacingError } from './errors.js';
import { show } from './show.js';

// Plain data may come from JSON, a form or another program, so every public function checks what it
// relies on. These readers copy while they check: a value is looked at once, and cannot change later.

/** No list of laps, reps or swimmers is longer; keeps an endless one from filling the memory. */
const LONGEST = 1_000_000;

/** The fields of a plain object, copied. `what` starts the sentence: "The pool". */
export function fieldsOf(value: unknown, what: string): Record<string, unknown> {
  try {
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ...value };
  } catch {
    throw unreadable(value, what);
  }
  throw new PacingError('wrong-shape', `${what} must be an object, not ${show(value)}.`, value);
}

/** The items of a list, copied. */
export function itemsOf(value: unknown, what: string): readonly unknown[] {
  let length = 0;
  try {
    if (Array.isArray(value)) {
      // By its length: an iterator of its own may never end.
      length = Number(value.length);
      if (length <= LONGEST) return Array.from({ length }, (_, i) => value[i]);
    }
  } catch {
    throw unreadable(value, what);
  }
  if (length > LONGEST) {
    const message = `${what} must be a list of at most ${LONGEST}, not ${length}.`;
    throw new PacingError('out-of-range', message, value);
  }
  throw new PacingError('wrong-shape', `${what} must be a list, not ${show(value)}.`, value);
}

/** A proxy or a getter threw. */
function unreadable(value: unknown, what: string): PacingError {
  return new PacingError('wrong-shape', `${what} must be plain data; reading it failed.`, value);
}

/** The text, if it is one. */
export function textOf(value: unknown, what: string): string {
  if (typeof value === 'string') return value;
  throw new PacingError('wrong-shape', `${what} must be text, not ${show(value)}.`, value);
}

/** A finite number; `above` is a bound it may not touch, `min` and `max` are bounds it may. */
export function numberOf(
  value: unknown,
  what: string,
  limits: { readonly above?: number; readonly min?: number; readonly max?: number } = {},
): number {
  const { above = -Infinity, min = -Infinity, max = Infinity } = limits;
  if (typeof value === 'number' && Number.isFinite(value)) {
    if (value > above && value >= min && value <= max) return value + 0; // turns -0 into 0
  }
  const bounds = [
    above > -Infinity && `above ${show(above)}`,
    min > -Infinity && `at least ${show(min)}`,
    max < Infinity && `at most ${show(max)}`,
  ].filter(Boolean);
  const wanted = ['a number', bounds.join(' and ')].join(' ').trim();
  throw new PacingError('out-of-range', `${what} must be ${wanted}, not ${show(value)}.`, value);
}

/** A whole number within bounds. */
export function countOf(value: unknown, what: string, min = 1, max = 1_000_000): number {
  const count = Number.isInteger(value) ? (value as number) : Number.NaN;
  if (count >= min && count <= max) return count + 0; // turns -0 into 0
  const message = `${what} must be a whole number from ${show(min)} to ${show(max)}, not ${show(value)}.`;
  throw new PacingError('out-of-range', message, value);
}

/** One of a few names. */
export function choiceOf<T extends string | number>(
  value: unknown,
  choices: readonly T[],
  what: string,
): T {
  const index = choices.indexOf(value as T);
  if (index >= 0) return choices[index] as T;
  const named = choices.map(show).join(', ');
  const message = `${what} must be one of ${named}, not ${show(value)}.`;
  throw new PacingError('unknown-choice', message, value);
}
