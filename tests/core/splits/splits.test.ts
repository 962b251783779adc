import {
  type Hundredths,
  hundredths,
  lapsOf,
  type Mark,
  splitsFromCumulative,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finishOf, splitsOf } from '../../../packages/core/src/splits/splits.js';
import { lap, swim, unevenSwim } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const times = (...counts: number[]) => counts.map(hundredths);
const mark = (distance: unknown, time: unknown) => ({ distance, time }) as Mark;
const laps = fc.array(lap, { minLength: 1, maxLength: 60 });

describe('splitsFromLaps', () => {
  test('adds the laps up', () => {
    expect(splitsFromLaps(50, times(3150, 3350))).toEqual({
      marks: [
        { distance: 50, time: 3150 },
        { distance: 100, time: 6500 },
      ],
    });
  });

  test('the last mark is the sum, exactly', () => {
    fc.assert(
      fc.property(laps, (each) => {
        const finish = splitsFromLaps(25, each).marks.at(-1);
        const sum = each.reduce((a: number, b) => a + b, 0);
        expect(finish).toEqual({ distance: 25 * each.length, time: sum });
      }),
    );
  });

  test('lapsOf takes it back', () => {
    fc.assert(
      fc.property(laps, (each) => {
        expect(lapsOf(splitsFromLaps(25, each))).toEqual(each);
      }),
    );
  });

  test('three laps of 33⅓ are 100, and 45 are 1500', () => {
    const marks = splitsFromLaps(100 / 3, Array(45).fill(hundredths(2200))).marks;
    expect([marks[0], marks[2], marks[44]].map((it) => it?.distance)).toEqual([
      33.333333, 100, 1500,
    ]);
  });

  test('names the lap that is none', () => {
    expect(refusal(() => splitsFromLaps(50, [3150, 0] as Hundredths[])).message).toBe(
      'Lap 2 must be a whole number of hundredths of a second above zero, not 0.',
    );
  });

  test('refuses laps that add up to more than is exact', () => {
    expect(codeOf(() => splitsFromLaps(50, times(2 ** 52, 2 ** 52)))).toBe('too-large');
  });
});

describe('splitsFromCumulative', () => {
  test('is the swim whose laps are the differences', () => {
    expect(splitsFromCumulative(50, times(3150, 6500))).toEqual(
      splitsFromLaps(50, times(3150, 3350)),
    );
  });

  test.each([[[3150, 3150]], [[3150, 3000]]])('%j do not grow', (given) => {
    expect(codeOf(() => splitsFromCumulative(50, times(...given)))).toBe('marks-out-of-order');
  });

  test('refuses a swim longer than any', () => {
    expect(refusal(() => splitsFromCumulative(6e8, times(1, 2))).message).toMatch(
      /^Mark 2's distance must be a number above 0 and at most 1000000000/,
    );
  });
});

describe.each([
  ['splitsFromLaps', splitsFromLaps],
  ['splitsFromCumulative', splitsFromCumulative],
])('%s refuses', (_, build) => {
  test.each([0, -50, 1e-9, 1e10, Number.NaN, '50', null])('laps of %s', (every) => {
    expect(refusal(() => build(every as number, times(3150)))).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/^The distance of a lap must be a number above 0/),
    });
  });

  test('an empty list', () => {
    expect(codeOf(() => build(50, []))).toBe('too-few-laps');
  });

  test.each(['3150', null, undefined, { 0: 3150, length: 1 }])('%j for a list', (given) => {
    expect(codeOf(() => build(50, given as never))).toBe('wrong-shape');
  });

  test.each([31.5, Number.NaN, '3150', null, -3150])('a time of %s', (time) => {
    expect(codeOf(() => build(50, [time as Hundredths]))).toBe('not-a-time');
  });
});

describe('splitsFromMarks', () => {
  test('takes marks at any distances, to a micrometre', () => {
    const marks = [mark(100 / 3, 2200), mark(150, 10_000)];
    expect(splitsFromMarks(marks)).toEqual({ marks: [mark(33.333333, 2200), mark(150, 10_000)] });
  });

  test('copies, and leaves out what is not a mark’s', () => {
    const given = [{ ...mark(50, 3150), swimmer: 'Mara Quill' }];
    const { marks } = splitsFromMarks(given);
    given[0]!.time = hundredths(1);
    expect(marks).toEqual([{ distance: 50, time: 3150 }]);
  });

  test.each([
    [[mark(100, 6500), mark(50, 7000)], /^Mark 2 must have a greater distance than/],
    [[mark(50, 3150), mark(50, 6500)], /^Mark 2 must have a greater distance than/],
    [[mark(50, 3150), mark(50.0000001, 6500)], /^Mark 2 must have a greater distance than/],
    [[mark(50, 3150), mark(100, 3150)], /^Mark 2 must have a greater time than/],
    [[mark(50, 3150), mark(100, 6500), mark(150, 6400)], /^Mark 3 must have a greater time than/],
  ])('%j is out of order', (marks, message) => {
    expect(refusal(() => splitsFromMarks(marks))).toMatchObject({
      code: 'marks-out-of-order',
      message: expect.stringMatching(message),
      input: marks,
    });
  });

  test.each([
    [null, 'wrong-shape', 'Mark 2 must be an object, not null.'],
    [mark('100', 6500), 'out-of-range', /^Mark 2's distance must be/],
    [mark(-100, 6500), 'out-of-range', /^Mark 2's distance must be/],
    [mark(100, 65.5), 'not-a-time', /^Mark 2's time must be/],
  ])('refuses %j', (second, code, message) => {
    expect(refusal(() => splitsFromMarks([mark(50, 3150), second as Mark]))).toMatchObject({
      code,
      message: expect.stringMatching(message),
    });
  });

  test('refuses no mark at all, and says what a swim needs', () => {
    expect(refusal(() => splitsFromMarks([]))).toMatchObject({
      code: 'too-few-laps',
      message: 'A swim needs at least one mark: its finish.',
    });
  });

  test('takes a hundred thousand marks, and no more', () => {
    const many = (count: number) => Array.from({ length: count }, (_, i) => mark(i + 1, i + 1));
    expect(splitsFromMarks(many(100_000)).marks).toHaveLength(100_000);
    expect(refusal(() => splitsFromMarks(many(100_001)))).toMatchObject({
      code: 'out-of-range',
      message: 'A swim has at most 100000 marks, not 100001.',
    });
  });
});

test('a swim comes back from JSON as it was', () => {
  fc.assert(
    fc.property(fc.oneof(swim, unevenSwim), (given) => {
      expect(splitsOf(JSON.parse(JSON.stringify(given)))).toEqual(given);
    }),
  );
});

test.each([null, 'a swim', [], {}, { marks: 1 }])('%j is no swim', (value) => {
  expect(refusal(() => splitsOf(value))).toMatchObject({
    code: 'wrong-shape',
    message: expect.stringMatching(/^The (swim must be an object|marks must be a list)/),
  });
});

test('the finish is the last mark', () => {
  expect(finishOf(splitsFromLaps(50, times(3150, 3350)))).toEqual(mark(100, 6500));
});
