import { readFileSync } from 'node:fs';
import { findSlips, type Hundredths, lapsOf, splitsFromLaps } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { numbersFrom } from '../random.js';

// Official results of the Olympic Games of 2000, 2004, 2008 and 2016, via the open dataset swimset:
// every 200, 400, 800 and 1500 freestyle for which all 50 m splits were published.
const file = readFileSync(new URL('./data/championship-freestyle.csv', import.meta.url), 'utf8');
const swims = file
  .trim()
  .split('\n')
  .slice(1)
  .map((row) => {
    const cells = row.split(',');
    return { swim: cells.slice(0, 6).join(' '), laps: cells.at(-1)!.split(' ').map(Number) };
  });
const slipsIn = (laps: readonly number[]) => findSlips(splitsFromLaps(50, laps as Hundredths[]));

/** The one swim that holds a slip: its laps 7 and 8 read 40.46 and 20.43 among laps near 30. */
const LATE = '2008 M s763 1500 heat 3';

describe('as published', () => {
  const alarms = swims.flatMap(({ swim, laps }) =>
    slipsIn(laps).map((slip) => ({ swim, laps, slip })),
  );

  test('the late touch is pointed at', () => {
    const found = alarms.filter(({ swim }) => swim === LATE);
    expect(found.map(({ slip }) => [slip.lap, slip.kind])).toEqual([[7, 'late-touch']]);
    const [{ laps, slip }] = found as [(typeof found)[number]];
    expect(laps.slice(5, 9)).toEqual([3045, 4046, 2043, 3034]);
    expect(lapsOf(slip.mend!).slice(5, 9)).toEqual([3045, 3045, 3044, 3034]);
  });

  // The requirement is 99.7 %, three false alarms; there is none.
  test('the other 1,300 swims are passed over', () => {
    expect(swims).toHaveLength(1301);
    expect(alarms.filter(({ swim }) => swim !== LATE)).toEqual([]);
  });

  test('so are they over laps of 100', () => {
    const over100 = swims
      .filter(({ swim }) => swim !== LATE)
      .map(({ laps }) => laps.filter((_, i) => i % 2).map((lap, i) => lap + laps[2 * i]!));
    const found = over100.filter(
      (laps) => findSlips(splitsFromLaps(100, laps as Hundredths[])).length > 0,
    );
    expect(found).toEqual([]);
  });
});

describe('with one slip put into each swim', () => {
  const late = (by: number) => (laps: number[], k: number) => {
    laps[k]! += by;
    laps[k + 1]! -= by;
    return laps;
  };
  const typed = (by: number) => (laps: number[], k: number) => {
    laps[k]! += by;
    return laps;
  };
  const missed = (laps: number[], k: number) => {
    laps.splice(k, 2, laps[k]! + laps[k + 1]!);
    return laps;
  };
  const extra = (laps: number[], k: number) => {
    const first = Math.round(0.45 * laps[k]!);
    laps.splice(k, 1, first, laps[k]! - first);
    return laps;
  };

  const [late3, late2, early3, early2] = [late(300), late(200), late(-300), late(-200)];
  /** What takes a lap and the next, so that it cannot fall on the last. */
  const pairs: readonly unknown[] = [late3, late2, early3, early2, missed];

  // The share of swims in which the right lap is named, and of these the share whose mend brings every
  // mark to within a second and a half of where it was.
  test.each([
    ['a touch 3 s late', late3, 0.99, 0.99],
    ['a touch 2 s late', late2, 0.95, 0.99],
    ['a touch 3 s early', early3, 0.98, 0.99],
    ['a touch 2 s early', early2, 0.9, 0.99],
    ['a missed touch', missed, 0.99, 0.99],
    ['a touch too many', extra, 0.99, 0.99],
    ['ten seconds too many', typed(1000), 0.99, 0.99],
    ['ten seconds too few', typed(-1000), 0.99, 0.99],
    ['a minute too many', typed(6000), 0.99, 0.99],
  ])('%s', (_, slip, share, right) => {
    const next = numbersFrom(20_260_901);
    const clean = swims.filter(({ swim }) => swim !== LATE);
    const outcomes = clean.map(({ laps }) => {
      const k = Math.floor(next() * (laps.length - (pairs.includes(slip) ? 1 : 0)));
      const found = slipsIn(slip([...laps], k)).find(({ lap }) => lap === k + 1);
      const marks = splitsFromLaps(50, laps as Hundredths[]).marks;
      const near = found?.mend?.marks.every(
        ({ time }, i) => Math.abs(time - (marks[i]?.time ?? Infinity)) <= 150,
      );
      return { named: found !== undefined, near: near === true };
    });
    const named = outcomes.filter((outcome) => outcome.named);
    expect(named.length / outcomes.length).toBeGreaterThanOrEqual(share);
    expect(named.filter(({ near }) => near).length / named.length).toBeGreaterThanOrEqual(right);
  });
});
