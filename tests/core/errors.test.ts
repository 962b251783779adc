import { isPacingError, PacingError, parseTime, type Result, safeParseTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { attempt } from '../../packages/core/src/errors.js';
import { anything } from '../generators.js';

describe('PacingError', () => {
  const error = new PacingError('time-unreadable', '"x" is no time.', 'x', 0);

  test('carries code, message, input and position', () => {
    expect(error).toMatchObject({ code: 'time-unreadable', input: 'x', position: 0 });
    expect(error.message).toBe('"x" is no time.');
  });

  test('is a RangeError with its own name', () => {
    expect(error).toBeInstanceOf(RangeError);
    expect(`${error}`).toBe('PacingError: "x" is no time.');
  });

  test('has no position where there is no text', () => {
    expect('position' in new PacingError('too-large', 'Too large.', 1)).toBe(false);
  });
});

describe('isPacingError', () => {
  test('knows its own', () => {
    expect(isPacingError(new PacingError('too-large', 'Too large.', 1))).toBe(true);
  });

  test('knows the error of another copy of the library, whose class is not this one', () => {
    const other = Object.assign(new RangeError('x'), { name: 'PacingError', code: 'too-large' });
    expect(isPacingError(other)).toBe(true);
  });

  test.each([
    ['another error', new RangeError('x')],
    [
      'an error of that name without a code',
      Object.assign(new Error('x'), { name: 'PacingError' }),
    ],
    ['an error with a code of its own', Object.assign(new Error('x'), { code: 'ENOENT' })],
    ['plain data that looks like one', { name: 'PacingError', code: 'too-large' }],
    ['nothing', undefined],
  ])('does not take %s for one', (_, value) => {
    expect(isPacingError(value)).toBe(false);
  });

  test('answers for a proxy that will not say what it is', () => {
    const closed = new Proxy(new Error('x'), {
      getPrototypeOf() {
        throw new TypeError('closed');
      },
    });
    expect(isPacingError(closed)).toBe(false);
  });

  test('answers for anything', () => {
    fc.assert(fc.property(anything, (value) => isPacingError(value) === false));
  });
});

describe('a Result', () => {
  test('holds the value, or the error that parseTime would throw', () => {
    const good: Result<number> = safeParseTime('33.5');
    const bad: Result<number> = safeParseTime('x');
    expect(good).toEqual({ ok: true, value: 3350 });
    expect(bad).toMatchObject({ ok: false, error: { code: 'time-unreadable' } });
    expect(() => parseTime('x')).toThrow(bad.ok ? '' : bad.error.message);
  });

  test('hides no error that is not the library’s own', () => {
    const broken = () => {
      throw new TypeError('a slip in the code');
    };
    expect(() => attempt(broken)).toThrow(TypeError);
  });
});
