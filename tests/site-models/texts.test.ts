import { hundredths } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { waterLine } from '~/brand/water-line';
import { readCountText } from '~/ui/count-text';
import { csvOf } from '~/ui/csv';
import { signedPercent, slowerOrFaster } from '~/ui/wording';

describe('a count field', () => {
  test.each([
    ['8', 8],
    [' 25 m ', 25],
    ['33,33yd', 33.33],
    ['33 1/3 m', 33 + 1 / 3],
    ['33⅓', 33 + 1 / 3],
    ['１２', 12],
  ])('reads %j', (text, count) => {
    expect(readCountText(text, 'Length', { whole: false })).toEqual({ count, error: null });
  });

  test.each([
    ['', 'Enter the reps.'],
    ['many', 'Reps must be a number, like 8.'],
    ['2.5', 'Reps must be a whole number.'],
    ['1', 'Reps must be 2 or more.'],
    ['99', 'Reps must be 40 or less.'],
  ])('says what would do instead of %j', (text, error) => {
    expect(readCountText(text, 'Reps', { least: 2, most: 40 })).toEqual({ count: null, error });
  });
});

describe('words for figures', () => {
  test.each([
    [0.0345, '+3.5'],
    [-0.0062, '−0.6'],
    [-0.0001, '0.0'],
    [0, '0.0'],
  ])('%d as a percentage', (ratio, text) => {
    expect(signedPercent(ratio)).toBe(text);
  });

  test('a difference in words', () => {
    expect(slowerOrFaster(hundredths(320))).toBe('3.20 slower');
    expect(slowerOrFaster(hundredths(-45))).toBe('0.45 faster');
    expect(slowerOrFaster(hundredths(0))).toBe('level');
  });
});

describe('a table to take along', () => {
  test('quotes what needs it and writes a plain minus', () => {
    expect(
      csvOf([
        ['Lap', 'a "b", c'],
        ['−0.83', '1:05.30'],
      ]),
    ).toBe('Lap,"a ""b"", c"\r\n-0.83,1:05.30\r\n');
  });

  test('lets no cell become a formula', () => {
    expect(csvOf([['=1+1', '@x', '+a', '-2+3', '+3.20']])).toBe("'=1+1,'@x,'+a,'-2+3,+3.20\r\n");
  });
});

describe('the water-line', () => {
  test('draws faster laps higher and cuts at halfway', () => {
    const { front, back, points } = waterLine([3000, 3300, 3200, 3100], 400, 90);
    expect(points).toEqual([
      [50, 0],
      [150, 90],
      [250, 60],
      [350, 30],
    ]);
    expect(front.startsWith('M0 0')).toBe(true);
    expect(front.endsWith(' 200 75')).toBe(true);
    expect(back.startsWith('M200 75')).toBe(true);
    expect(back.endsWith(' 400 30')).toBe(true);
  });

  test('draws level laps as a level line', () => {
    expect(waterLine([3000, 3000], 100, 10).front).not.toMatch(/NaN|Infinity/);
  });
});
