import { formatIsoDuration, hundredths, parseIsoDuration } from 'backhalf';
import fc from 'fast-check';
import { Duration } from 'luxon';
import * as tinyduration from 'tinyduration';
import { expect, test } from 'vitest';
import { difference } from '../generators.js';

// Two other readers of ISO 8601 durations: they read what is written here, and their writing is read.
const time = fc.integer({ min: 0, max: 3_600_000 }).map(hundredths);

test('luxon reads what is written, before and below zero', () => {
  fc.assert(
    fc.property(difference, (t) => {
      const read = Duration.fromISO(formatIsoDuration(t));
      expect(read.isValid).toBe(true);
      expect(Math.round(read.toMillis() / 10)).toBe(t);
    }),
  );
});

test('what luxon writes is read', () => {
  fc.assert(
    fc.property(time, (t) => {
      const written = Duration.fromMillis(t * 10).shiftTo('hours', 'minutes', 'seconds');
      expect(parseIsoDuration(written.toISO() ?? '')).toBe(t);
    }),
  );
});

test('tinyduration finds the same hours, minutes and seconds', () => {
  fc.assert(
    fc.property(time, (t) => {
      const { hours = 0, minutes = 0, seconds = 0 } = tinyduration.parse(formatIsoDuration(t));
      expect(Math.round(hours * 360_000 + minutes * 6000 + seconds * 100)).toBe(t);
      expect([minutes < 60, seconds < 60]).toEqual([true, true]);
    }),
  );
});

test('what tinyduration writes is read', () => {
  fc.assert(
    fc.property(time, (t) => {
      const [hours, minutes] = [Math.floor(t / 360_000), Math.floor(t / 6000) % 60];
      const written = tinyduration.serialize({ hours, minutes, seconds: (t % 6000) / 100 });
      expect(parseIsoDuration(written)).toBe(t);
    }),
  );
});
