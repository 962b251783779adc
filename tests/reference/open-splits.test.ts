import { readFileSync } from 'node:fs';
import {
  type Hundredths,
  halvesOf,
  lapsOf,
  pacingProfile,
  type Splits,
  splitsFromCumulative,
  splitsFromLaps,
} from 'backhalf';
import { linearRegression, mean, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';

// Official results of the Olympic Games of 2000, 2004, 2008 and 2016, via the open dataset swimset:
// every 200, 400, 800 and 1500 freestyle for which all 50 m splits were published.
const file = readFileSync(new URL('./data/championship-freestyle.csv', import.meta.url), 'utf8');
const swims = file
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => {
    const cells = row.split(',');
    const laps = cells.at(-1)!.split(' ').map(Number) as Hundredths[];
    return { distance: Number(cells[3]), time: Number(cells[7]), laps };
  });

const sum = (times: readonly number[]) => times.reduce((a, b) => a + b, 0);
const eachSwim = (check: (swim: (typeof swims)[number], splits: Splits) => void) => () => {
  for (const swim of swims) check(swim, splitsFromLaps(50, swim.laps));
};

test('all 1301 swims are there', () => {
  expect(swims).toHaveLength(1301);
});

describe('every published swim', () => {
  test(
    'adds up to its official time and distance',
    eachSwim(({ distance, time }, splits) => {
      expect(splits.marks.at(-1)).toEqual({ distance, time });
    }),
  );

  test(
    'gives its laps back, and is the same swim by its running times',
    eachSwim(({ laps }, splits) => {
      expect(lapsOf(splits)).toEqual(laps);
      const times = splits.marks.map(({ time }) => time);
      expect(splitsFromCumulative(50, times)).toEqual(splits);
    }),
  );

  test(
    'has the halves of its laps, none read off a line',
    eachSwim(({ laps }, splits) => {
      const half = laps.length / 2;
      expect(halvesOf(splits)).toEqual({
        first: sum(laps.slice(0, half)),
        second: sum(laps.slice(half)),
        interpolated: false,
      });
    }),
  );

  test(
    'has the profile another library finds',
    eachSwim(({ laps }, splits) => {
      const profile = pacingProfile(splits);
      const middle = laps.slice(1, -1);
      expect(profile.mean).toBeCloseTo(mean(laps), 9);
      expect(profile.spread).toBeCloseTo(sampleStandardDeviation(laps), 8);
      const slope = linearRegression(middle.map((lap, i) => [i, lap])).m;
      expect(profile.middle.drift).toBeCloseTo(slope, 8);
      expect(profile.first).toBeCloseTo(laps[0]! / mean(middle) - 1, 12);
      expect(profile.fastest).toBe(laps.indexOf(Math.min(...laps) as Hundredths) + 1);
    }),
  );
});
