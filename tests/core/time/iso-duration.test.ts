import { formatIsoDuration, hundredths, parseIsoDuration, safeParseIsoDuration } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { difference } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

describe('formatIsoDuration', () => {
  test.each([
    [0, 'PT0S'],
    [1, 'PT0.01S'],
    [3350, 'PT33.5S'],
    [6000, 'PT1M'],
    [6007, 'PT1M0.07S'],
    [100_660, 'PT16M46.6S'],
    [360_000, 'PT1H'],
    [372_345, 'PT1H2M3.45S'],
    [-83, '-PT0.83S'],
    [36_000_000, 'PT100H'],
  ])('%d is %s', (time, text) => {
    expect(formatIsoDuration(hundredths(time))).toBe(text);
  });

  test.each([0.5, Number.NaN, 'PT5S', null])('refuses %s', (t) => {
    expect(refusal(() => formatIsoDuration(t as never))).toMatchObject({
      code: 'not-a-time',
      message: expect.stringMatching(/^The time must be/),
    });
  });
});

describe('parseIsoDuration', () => {
  test.each([
    ['PT16M46.6S', 100_660],
    ['PT16M46,6S', 100_660],
    ['PT1H2M3.45S', 372_345],
    ['PT1H3.45S', 360_345],
    ['PT90M', 540_000],
    ['PT0.5H', 180_000],
    ['PT1H1.5M', 369_000],
    ['PT100S', 10_000],
    ['PT0S', 0],
    ['-PT0S', 0],
    ['-PT0.83S', -83],
    ['−PT0.83S', -83],
    ['+PT5S', 500],
    ['PT1.005S', 101],
    ['PT0.00075M', 5],
    ['-PT0.0000125H', -5],
    ['PT0.004S', 0],
  ])('%s is %d', (text, time) => {
    expect(parseIsoDuration(text)).toBe(time);
  });

  test('reads back what was written', () => {
    fc.assert(
      fc.property(difference, (time) => parseIsoDuration(formatIsoDuration(time)) === time),
    );
  });

  test.each([
    ['', 0],
    ['16:46.6', 0],
    ['P', 1],
    ['P1DT5S', 1],
    ['PT', 2],
    ['PT.5S', 2],
    ['PT5', 3],
    ['PT5.', 4],
    ['PT1.5', 5],
    ['PT1.5.5S', 5],
    ['pt5s', 0],
    [' PT5S', 0],
    ['PT5S ', 4],
    ['PT16X', 4],
    ['PT5S3M', 4],
    ['PT5M3H', 5],
    ['PT1.5H3M', 6],
    ['PT1,5H3S', 6],
    ['PT10.25H3M', 8],
    ['PT1H10.25M3S', 10],
    ['PT10.25S3S', 8],
    ['PT10.255', 8],
    ['PT1H1.5M3S', 8],
    ['--PT5S', 1],
    [`PT${'9'.repeat(61)}S`.padEnd(65, 'S'), 64],
    [`PT${'0'.repeat(61)}5S`, 64],
  ])('%j stops being one at %d', (text, position) => {
    expect(refusal(() => parseIsoDuration(text))).toMatchObject({
      code: 'time-unreadable',
      position,
      input: text,
    });
  });

  test('a text of ten million digits is refused at once', () => {
    const start = performance.now();
    expect(codeOf(() => parseIsoDuration(`PT${'9'.repeat(1e7)}S`))).toBe('time-unreadable');
    expect(performance.now() - start).toBeLessThan(400);
  });

  test('says what would do', () => {
    expect(refusal(() => parseIsoDuration('16:46')).message).toBe(
      '"16:46" is no duration of hours, minutes and seconds; write one like PT16M46.6S.',
    );
  });

  test('takes 64 characters, and finds them too large', () => {
    expect(codeOf(() => parseIsoDuration(`PT${'9'.repeat(61)}S`))).toBe('too-large');
  });

  test.each([5, null, undefined, ['PT5S']])('%j is no text', (value) => {
    expect(refusal(() => parseIsoDuration(value as never))).toMatchObject({
      code: 'wrong-shape',
      message: expect.stringMatching(/^A duration must be text/),
    });
  });
});

test('safeParseIsoDuration gives what parseIsoDuration gives or throws', () => {
  expect(safeParseIsoDuration('PT33.5S')).toEqual({ ok: true, value: 3350 });
  expect(safeParseIsoDuration('33.5')).toEqual({
    ok: false,
    error: refusal(() => parseIsoDuration('33.5')),
  });
});
