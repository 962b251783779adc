import { PacingError } from './errors.js';
import { show } from './show.js';

// Plain data may come from JSON, a form or another program, so every public function checks what it
// relies on. These readers copy while they check: a value is looked at once, and cannot change later.

/** The fields of a plain object, copied. `what` starts the sentence: "The pool". */
export function fieldsOf(value: unknown, what: string): Record<string, unknown> {
  try {
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return { ...value };
  } catch {
    // A proxy or a getter threw: it is no plain data.
  }
  throw new PacingError('wrong-shape', `${what} must be an object, not ${show(value)}.`, value);
}

/** The items of a list, copied. */
export function itemsOf(value: unknown, what: string): readonly unknown[] {
  try {
    if (Array.isArray(value)) return Array.from(value);
  } catch {
    // As above.
  }
  throw new PacingError('wrong-shape', `${what} must be a list, not ${show(value)}.`, value);
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
    if (value > above && value >= min && value <= max) return value;
  }
  const bounds = [
    above > -Infinity && `above ${above}`,
    min > -Infinity && `at least ${min}`,
    max < Infinity && `at most ${max}`,
  ].filter(Boolean);
  const wanted = ['a number', bounds.join(' and ')].join(' ').trim();
  throw new PacingError('out-of-range', `${what} must be ${wanted}, not ${show(value)}.`, value);
}

/** A whole number within bounds. */
export function countOf(value: unknown, what: string, min = 1, max = 1_000_000): number {
  if (Number.isInteger(value)) return numberOf(value, what, { min, max });
  const message = `${what} must be a whole number from ${min} to ${max}, not ${show(value)}.`;
  throw new PacingError('out-of-range', message, value);
}

/** One of a few names. */
export function choiceOf<T extends string>(value: unknown, choices: readonly T[], what: string): T {
  if (choices.includes(value as T)) return value as T;
  const named = choices.map((choice) => `"${choice}"`).join(', ');
  throw new PacingError(
    'unknown-choice',
    `${what} must be one of ${named}, not ${show(value)}.`,
    value,
  );
}
