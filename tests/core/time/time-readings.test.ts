import { formatTime, hundredths, parseTime, type TimeWindow, timeReadings } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldSigns } from '../../../packages/core/src/time/fold-signs.js';
import { difference } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const read = (text: string) => timeReadings(text).map((time) => formatTime(time));

describe('digits alone, likeliest first', () => {
  test.each([
    ['5', ['0:05.00']],
    ['45', ['45.00']],
    ['90', ['1:30.00']],
    ['105', ['1:05.00', '10.50', '0:01.05', '1:45.00']],
    ['175', ['17.50', '0:01.75', '2:55.00']],
    ['000', ['0.00']],
    ['3350', ['33.50', '33:50.00']],
    ['3375', ['33.75']],
    ['1646', ['16:46.00', '16.46']],
    ['2000', ['20.00', '20:00.00']],
    ['1959', ['19:59.00', '19.59']],
    ['0530', ['5:30.00', '0:05.30']],
    ['10530', ['1:05.30', '1:05:30.00']],
    ['10575', ['1:05.75']],
    ['16030', []],
    ['104405', ['10:44.05']],
    ['106005', []],
    ['1020345', ['1:02:03.45']],
    ['1600345', []],
    ['1026045', []],
    ['12345678', []],
  ])('%s: %j', (text, times) => {
    expect(read(text)).toEqual(times);
  });
});

describe('a point that may stand for a colon', () => {
  test.each([
    ['1.05', ['1:05.00', '0:01.05']],
    ['1,5', ['0:01.50']],
    ['1.75', ['0:01.75']],
    ['0.45', ['0.45']],
    ['16.46', ['16.46']],
    ['105.3', ['1:05.30', '1:45.30']],
    ['112.3', ['1:12.30', '1:52.30']],
    ['175.3', ['2:55.30']],
    ['1646.6', ['16:46.60']],
    ['1690.5', []],
    ['10530.5', []],
    ['+1.05', ['0:01.05']],
  ])('%s: %j', (text, times) => {
    expect(read(text)).toEqual(times);
  });
});

describe('groups', () => {
  test.each([
    ['1:05', '1:05.00'],
    [':45', '45.00'],
    [':45.3', '45.30'],
    ['999:59', '16:39:59.00'],
    ['1.05.3', '1:05.30'],
    ['1:02:03', '1:02:03.00'],
    ['1:02:03.4', '1:02:03.40'],
    ['1.02.03.45', '1:02:03.45'],
    ['999:59:59.99', '999:59:59.99'],
  ])('%s is %s', (text, time) => {
    expect(read(text)).toEqual([time]);
  });

  test.each([
    '1000:00',
    '1:60',
    '1:5',
    '1:05:60',
    '1:60:05',
    '.05.30',
    '.45',
    ':05:03',
    '1.05:30',
    '1:02.03.45',
    '1:02:03:45',
    '1:02:03.4.5',
    '1:05.',
    ':',
    '1:05.123',
    '1::05',
  ])('%s is no time', (text) => {
    expect(read(text)).toEqual([]);
  });
});

describe('a sign', () => {
  test('goes to every reading', () => {
    expect(read('-105')).toEqual(['−1:05.00', '−10.50', '−1.05', '−1:45.00']);
  });

  test.each(['+', '-', '--5', '+-5', '5-'])('%s is none', (text) => {
    expect(read(text)).toEqual([]);
  });
});

describe('blanks and units', () => {
  test.each([
    [' 1 : 05 . 3 ', ['1:05.30']],
    ['  33.5', ['33.50']],
    ['33.5  ', ['33.50']],
    ['33.5\u200bs', ['33.50']],
    ['33.5"', ['33.50']],
    ['45s', ['45.00']],
    ['45 Sec', ['45.00']],
    ['45 secs', []],
    ['s', []],
    ['"', []],
    ['31 32', []],
    ['31  32', []],
    ['1 05.3', []],
  ])('%j: %j', (text, times) => {
    expect(read(text)).toEqual(times);
  });

  test('65 characters are no time, whatever they are', () => {
    expect(read('1:05'.padStart(64))).toEqual(['1:05.00']);
    expect(read('1:05'.padStart(65))).toEqual([]);
  });
});

describe('within a window', () => {
  const within = (from: number, to: number): TimeWindow => ({
    from: hundredths(from),
    to: hundredths(to),
  });

  test.each([
    ['105', 5000, 9000, [6500]],
    ['105', 105, 1050, [1050, 105]],
    ['105', 1051, 6499, []],
    ['105', 0, 360_000, [6500, 1050, 105, 10_500]],
    ['-1:05', -6500, 0, [-6500]],
    ['soon', 0, 360_000, []],
  ])('%s from %d to %d: %j', (text, from, to, times) => {
    expect(timeReadings(text, within(from, to))).toEqual(times);
  });

  test.each([
    [null, 'wrong-shape', 'The window must be an object, not null.'],
    [{}, 'not-a-time', /^The fastest time must be/],
    [{ from: 0 }, 'not-a-time', /^The slowest time must be/],
    [{ from: 0, to: 65.5 }, 'not-a-time', /^The slowest time must be/],
  ])('refuses %j', (window, code, message) => {
    expect(refusal(() => timeReadings('105', window as never))).toMatchObject({
      code,
      message: expect.stringMatching(message),
    });
  });
});

test.each([105, null, undefined, ['105']])('%j is no text', (value) => {
  expect(refusal(() => timeReadings(value as never))).toMatchObject({
    code: 'wrong-shape',
    message: expect.stringMatching(/^A time must be text/),
  });
});

test('what was written is the likeliest reading, whatever stands for colon and point', () => {
  const colon = fc.constantFrom(':', ' : ', "'", '′', '’', '：');
  const point = fc.constantFrom('.', ',', ' . ', '"', '″', '．');
  fc.assert(
    fc.property(difference, colon, point, (time, c, p) => {
      const text = formatTime(time).replaceAll(':', c).replace('.', p);
      expect(timeReadings(text)[0]).toBe(time);
    }),
  );
});

test('one reading is what parseTime gives', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[+-]?\d{0,4}([:.,]\d{1,2}){0,3}$/), (text) => {
      const readings = timeReadings(text);
      if (readings.length === 1) expect(parseTime(text)).toBe(readings[0]);
      else expect(codeOf(() => parseTime(text))).toMatch(/^time-(unreadable|ambiguous)$/);
    }),
  );
});

test('folding keeps every character in its place', () => {
  const characters = fc.array(fc.integer({ min: 0, max: 0xffff }));
  fc.assert(
    fc.property(characters, (codes) => {
      expect(foldSigns(String.fromCharCode(...codes))).toHaveLength(codes.length);
    }),
  );
});
