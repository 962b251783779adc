import { describe, expect, test } from 'vitest';
import {
  choiceOf,
  countOf,
  fieldsOf,
  itemsOf,
  numberOf,
  textOf,
} from '../../packages/core/src/check.js';
import { codeOf, refusal } from '../refusal.js';

const closed = (target: object) =>
  new Proxy(target, {
    get() {
      throw new TypeError('closed');
    },
    ownKeys() {
      throw new TypeError('closed');
    },
  });
const says = (call: () => unknown) => refusal(call).message;

describe('fieldsOf', () => {
  test('copies, so that what was checked cannot change', () => {
    const given = { length: 25 };
    const fields = fieldsOf(given, 'The pool');
    given.length = 50;
    expect(fields).toEqual({ length: 25 });
  });

  test('looks at each field once', () => {
    let looks = 0;
    const given = {
      get length() {
        looks += 1;
        return 25;
      },
    };
    expect(fieldsOf(given, 'The pool')['length']).toBe(25);
    expect(looks).toBe(1);
  });

  test.each<[string, unknown, string]>([
    ['a list', [], 'The pool must be an object, not a list.'],
    ['null', null, 'The pool must be an object, not null.'],
    ['text', 'SCM', 'The pool must be an object, not "SCM".'],
  ])('refuses %s', (_, value, message) => {
    expect(refusal(() => fieldsOf(value, 'The pool'))).toMatchObject({
      code: 'wrong-shape',
      message,
      input: value,
    });
  });
});

describe('itemsOf', () => {
  test('copies', () => {
    const given = [1, 2];
    const items = itemsOf(given, 'The laps');
    given.push(3);
    expect(items).toEqual([1, 2]);
  });

  test('reads a hole as undefined', () => {
    expect(itemsOf(new Array(2), 'The laps')).toEqual([undefined, undefined]);
  });

  test('goes by the length, not by an iterator that never ends', () => {
    const endless = Object.assign([1, 2], {
      *[Symbol.iterator]() {
        while (true) yield 1;
      },
    });
    expect(itemsOf(endless, 'The laps')).toEqual([1, 2]);
  });

  test('takes a million and no more', () => {
    expect(itemsOf(new Array(1_000_000), 'The laps')).toHaveLength(1_000_000);
    expect(refusal(() => itemsOf(new Array(1_000_001), 'The laps'))).toMatchObject({
      code: 'out-of-range',
      message: 'The laps must be a list of at most 1000000, not 1000001.',
    });
  });

  test.each<[string, unknown, string]>([
    ['an object', { length: 2 }, 'The laps must be a list, not an object.'],
    ['text', '31.5', 'The laps must be a list, not "31.5".'],
  ])('refuses %s', (_, value, message) => {
    expect(refusal(() => itemsOf(value, 'The laps'))).toMatchObject({
      code: 'wrong-shape',
      message,
    });
  });
});

test('what throws while it is read is refused', () => {
  const refused = [() => fieldsOf(closed({}), 'It'), () => itemsOf(closed([]), 'It')].map(refusal);
  for (const { code, message } of refused) {
    expect(code).toBe('wrong-shape');
    expect(message).toBe('It must be plain data; reading it failed.');
  }
});

describe('textOf', () => {
  test('takes text, also none', () => {
    expect([textOf('x', 'A time'), textOf('', 'A time')]).toEqual(['x', '']);
  });

  test.each([1, null, undefined, ['x'], new String('x')])('refuses %j', (value) => {
    expect(codeOf(() => textOf(value, 'A time'))).toBe('wrong-shape');
  });

  test('says what must be text', () => {
    expect(says(() => textOf(65.3, 'A time'))).toBe('A time must be text, not 65.3.');
  });
});

describe('numberOf', () => {
  test.each([
    [1, { above: 0 }],
    [5e-324, { above: 0 }],
    [0, { min: 0 }],
    [10, { max: 10 }],
    [-1e308, {}],
  ])('takes %d within %j', (value, limits) => {
    expect(numberOf(value, 'It', limits)).toBe(value);
  });

  test.each([
    [0, { above: 0 }],
    [-1, { min: 0 }],
    [10.001, { max: 10 }],
    [Number.NaN, {}],
    [Infinity, {}],
    ['1', {}],
    [1n, {}],
    [new Number(1), {}],
  ])('refuses %s within %j', (value, limits) => {
    expect(codeOf(() => numberOf(value, 'It', limits))).toBe('out-of-range');
  });

  test('turns −0 into 0', () => {
    expect(Object.is(numberOf(-0, 'It'), 0)).toBe(true);
  });

  test('says within what', () => {
    expect(says(() => numberOf('x', 'It'))).toBe('It must be a number, not "x".');
    expect(says(() => numberOf(0, 'It', { above: 0, max: 9 }))).toBe(
      'It must be a number above 0 and at most 9, not 0.',
    );
    expect(says(() => numberOf(-9, 'It', { min: -5 }))).toBe(
      'It must be a number at least −5, not −9.',
    );
  });
});

describe('countOf', () => {
  test.each([
    [1, undefined, undefined],
    [1_000_000, undefined, undefined],
    [0, 0, undefined],
    [7, 2, 7],
  ])('takes %d from %s to %s', (value, min, max) => {
    expect(countOf(value, 'It', min, max)).toBe(value);
  });

  test.each([
    [0, undefined, undefined],
    [1_000_001, undefined, undefined],
    [1.5, undefined, undefined],
    [8, 2, 7],
    [Number.NaN, undefined, undefined],
    ['2', undefined, undefined],
  ])('refuses %s from %s to %s', (value, min, max) => {
    expect(codeOf(() => countOf(value, 'It', min, max))).toBe('out-of-range');
  });

  test('turns −0 into 0', () => {
    expect(Object.is(countOf(-0, 'It', 0), 0)).toBe(true);
  });

  test('says what would do', () => {
    expect(says(() => countOf(1.5, 'It', 2, 7))).toBe(
      'It must be a whole number from 2 to 7, not 1.5.',
    );
    expect(says(() => countOf(8, 'It', 2, 7))).toBe(
      'It must be a whole number from 2 to 7, not 8.',
    );
  });
});

describe('choiceOf', () => {
  test('takes one of the names', () => {
    expect(choiceOf('yd', ['m', 'yd'], 'The unit')).toBe('yd');
  });

  test('turns −0 into 0', () => {
    expect(Object.is(choiceOf(-0, [0, 1], 'It'), 0)).toBe(true);
  });

  test.each(['ft', 'M', undefined, ['m'], 1])('refuses %j', (value) => {
    expect(codeOf(() => choiceOf(value, ['m', 'yd'], 'The unit'))).toBe('unknown-choice');
  });

  test('names the choices', () => {
    expect(says(() => choiceOf('ft', ['m', 'yd'], 'The unit'))).toBe(
      'The unit must be one of "m", "yd", not "ft".',
    );
    expect(says(() => choiceOf(3, [0, 1, 2], 'It'))).toBe('It must be one of 0, 1, 2, not 3.');
  });
});
