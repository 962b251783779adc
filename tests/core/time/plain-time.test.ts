import { timeReadings } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { plainTime } from '../../../packages/core/src/time/plain-time.js';

const PLAIN = ['33.50', '99.99', '1:05.30', '16:46.60', '1:02:03.45', '10:59:59.99'];

test.each(PLAIN)('%s is read at one go', (text) => {
  expect(timeReadings(text)).toEqual([plainTime(text)]);
});

test.each([
  '',
  '.50',
  '5.30',
  '0.83',
  '133.50',
  '33,50',
  '1:5.30',
  ':45.30',
  '100:00:00.00',
  '1:05',
])('%j is left to the full reader', (text) => {
  expect(plainTime(text)).toBeNull();
});

describe('one slip away, it reads what the full reader reads, or nothing', () => {
  const slips = PLAIN.flatMap((text) =>
    [...text].flatMap((_, at) =>
      ['', ...'0123456789:.,x /', '-', '٣'].flatMap((sign) => [
        text.slice(0, at) + sign + text.slice(at + 1),
        text.slice(0, at) + sign + text.slice(at),
      ]),
    ),
  );

  test.each([...new Set(slips)].filter((text) => plainTime(text) !== null))('%s', (text) => {
    expect(timeReadings(text)).toEqual([plainTime(text)]);
  });

  test('most slips leave no plain time', () => {
    expect(slips.filter((text) => plainTime(text) === null).length).toBeGreaterThan(600);
  });
});
