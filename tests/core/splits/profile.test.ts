import { hundredths, pacingProfile, type Splits, splitsFromLaps, splitsFromMarks } from 'backhalf';
import fc from 'fast-check';
import { linearRegression, mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { lap } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const laps = (every: number, ...times: number[]) => splitsFromLaps(every, times.map(hundredths));
const many = fc.array(lap, { minLength: 3, maxLength: 60 });
const profileOf = (times: readonly number[]) => pacingProfile(laps(50, ...times));

test('a swim of four laps', () => {
  expect(pacingProfile(laps(50, 2800, 3000, 3100, 2900))).toEqual({
    laps: [2800, 3000, 3100, 2900],
    againstMean: [2800 / 2950 - 1, 3000 / 2950 - 1, 3100 / 2950 - 1, 2900 / 2950 - 1],
    mean: 2950,
    spread: Math.sqrt(50_000 / 3),
    variation: Math.sqrt(50_000 / 3) / 2950,
    middle: { mean: 3050, variation: Math.sqrt(5000) / 3050, drift: 100 },
    first: 2800 / 3050 - 1,
    last: 2900 / 3050 - 1,
    fastest: 1,
    slowest: 3,
  });
});

test('a single middle lap varies and drifts by nothing', () => {
  expect(pacingProfile(laps(50, 2800, 3000, 2900)).middle).toEqual({
    mean: 3000,
    variation: 0,
    drift: 0,
  });
});

test('of equal laps the earliest is the fastest, and the slowest', () => {
  expect(profileOf([3000, 2900, 3100, 2900, 3100])).toMatchObject({ fastest: 2, slowest: 3 });
  expect(profileOf([3000, 3000, 3000])).toMatchObject({ fastest: 1, slowest: 1 });
});

test('mean, spread and drift agree with another library', () => {
  fc.assert(
    fc.property(many, (times) => {
      const profile = profileOf(times);
      const middle = times.slice(1, -1);
      const line = linearRegression(middle.map((time, i) => [i, time]));
      expect(profile.mean).toBeCloseTo(mean(times), 8);
      expect(profile.spread).toBeCloseTo(sampleStandardDeviation(times), 6);
      expect(profile.middle.mean).toBeCloseTo(mean(middle), 8);
      expect(profile.middle.drift).toBeCloseTo(middle.length > 1 ? line.m : 0, 6);
    }),
  );
});

test('deviations from the mean add up to nothing', () => {
  fc.assert(
    fc.property(many, (times) => {
      expect(profileOf(times).againstMean.reduce((a, b) => a + b)).toBeCloseTo(0, 9);
    }),
  );
});

test('a swim twice as slow has the same profile in ratios', () => {
  fc.assert(
    fc.property(many, (times) => {
      const [once, twice] = [times, times.map((time) => 2 * time)].map(profileOf);
      expect(twice?.spread).toBeCloseTo(2 * once!.spread, 6);
      expect(twice?.variation).toBeCloseTo(once!.variation, 10);
      expect(twice?.middle.drift).toBeCloseTo(2 * once!.middle.drift, 6);
      expect(twice?.first).toBeCloseTo(once!.first, 10);
      expect(twice?.last).toBeCloseTo(once!.last, 10);
    }),
  );
});

test('swum backwards, the drift turns round and first and last change places', () => {
  fc.assert(
    fc.property(many, (times) => {
      const [there, back] = [times, [...times].reverse()].map(profileOf);
      expect(back!.middle.drift + there!.middle.drift).toBeCloseTo(0, 6);
      expect(back!.first).toBeCloseTo(there!.last, 12);
      expect(back!.last).toBeCloseTo(there!.first, 12);
    }),
  );
});

test('equal laps vary and drift by exactly nothing', () => {
  fc.assert(
    fc.property(lap, fc.integer({ min: 3, max: 60 }), (time, count) => {
      expect(profileOf(Array(count).fill(time))).toMatchObject({
        spread: 0,
        middle: { variation: 0, drift: 0 },
        first: 0,
        last: 0,
      });
    }),
  );
});

test('over laps of 100 an alternating pattern of 50s cancels', () => {
  const swim = laps(50, 2950, 3050, 2950, 3050, 2950, 3050, 2950, 3050);
  expect(pacingProfile(swim).spread).toBeGreaterThan(50);
  expect(pacingProfile(swim, 100)).toMatchObject({ laps: Array(4).fill(6000), spread: 0 });
});

test('marks between even laps do no harm where the lap length is given', () => {
  const marks = [37.5, 50, 100, 150].map((distance) => ({
    distance,
    time: hundredths(distance * 60),
  }));
  expect(pacingProfile(splitsFromMarks(marks), 50).laps).toEqual([3000, 3000, 3000]);
});

test('laps of 33⅓ are even', () => {
  expect(pacingProfile(laps(100 / 3, 2100, 2200, 2200, 2150)).middle.drift).toBe(0);
});

describe('refuses', () => {
  test.each([
    [[3000], 'A profile needs at least three laps, not 1; use the halves instead.'],
    [[3000, 3100], 'A profile needs at least three laps, not 2; use the halves instead.'],
  ])('the laps %j', (times, message) => {
    expect(refusal(() => profileOf(times))).toMatchObject({ code: 'too-few-laps', message });
  });

  test('long laps that are fewer than three', () => {
    expect(codeOf(() => pacingProfile(laps(50, 1, 1, 1, 1), 100))).toBe('too-few-laps');
  });

  const uneven = splitsFromMarks(
    [50, 150, 200, 250].map((distance) => ({ distance, time: hundredths(distance * 60) })),
  );

  test('marks that are not evenly spaced', () => {
    expect(refusal(() => pacingProfile(uneven))).toMatchObject({
      code: 'laps-uneven',
      message: 'The marks are not evenly spaced; choose one lap length that ends at marks.',
    });
  });

  test('a lap length that some mark lacks', () => {
    expect(codeOf(() => pacingProfile(uneven, 50))).toBe('no-mark-there');
  });

  test.each([null, {}, { marks: 1 }])('%j for a swim', (swim) => {
    expect(codeOf(() => pacingProfile(swim as unknown as Splits))).toBe('wrong-shape');
  });
});
