import {
  findSetSlips,
  findSlips,
  type Hundredths,
  hundredths,
  lapsOf,
  SCM,
  type SetSlip,
  type Splits,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { swumSet } from '../../generators.js';
import { numbersFrom } from '../../random.js';
import { codeOf } from '../../refusal.js';

const laps = (every: number, ...times: number[]) => splitsFromLaps(every, times.map(hundredths));
const finish = (distance: number, time: number) =>
  splitsFromMarks([{ distance, time: hundredths(time) }]);
const setOf = (repDistance: number, reps: readonly Splits[]) => ({ pool: SCM, repDistance, reps });

/** Seven hundreds by fifties, none the same, with another rep in the fourth place. */
const with4th = (rep: Splits) => {
  const reps = [0, 10, 20, 0, 10, 20, 0].map((by, i) => laps(50, 3150 + by, 3350 - 10 * (i % 2)));
  return setOf(100, reps.with(3, rep));
};

/** The only slip: its lap, its kind and the laps of the mended rep. */
function only(set: Parameters<typeof findSetSlips>[0], rep = 4) {
  const slips = findSetSlips(set);
  expect(slips).toHaveLength(1);
  const [slip] = slips as [SetSlip];
  expect(slip.rep).toBe(rep);
  return [slip.lap, slip.kind, slip.mend && lapsOf(slip.mend)];
}

describe('findSetSlips names the rep, the lap, the kind and the mend', () => {
  test.each<[string, Splits, unknown[], string]>([
    [
      'the halfway touch missed',
      finish(100, 6500),
      [1, 'missed-touch', [3155, 3345]],
      'In rep 4 there is no mark at 50, where other reps have one: the touch was probably missed, and the mend puts it where theirs are.',
    ],
    [
      'the halfway touch missed, and the finish typed in its place',
      laps(50, 6500),
      [1, 'missed-touch', [3155, 3345]],
      'In rep 4 one lap is missing and lap 1 took 1:05.00: a touch was probably missed, and two laps stand in one.',
    ],
    [
      'two laps in one, and another lap after it',
      laps(50, 6500, 3350),
      [1, 'missed-touch', [3155, 3345]],
      'In rep 4 lap 1 took 1:05.00 where 31.6 is usual: a touch was probably missed, and two laps stand in one.',
    ],
    [
      'two reps in one',
      laps(50, 6500, 6500),
      [1, 'missed-touch', [3155, 3345]],
      'In rep 4 lap 1 took 1:05.00 where 31.6 is usual: a touch was probably missed, and two laps stand in one.',
    ],
    [
      'a finish missed',
      laps(50, 3150, 9000),
      [2, 'missed-touch', null],
      'In rep 4 all laps together took 2:01.50 where 1:05.1 is usual: the finish was probably missed, or two reps stand in one.',
    ],
    [
      'a rep left off halfway',
      laps(50, 3150),
      [1, 'missed-touch', null],
      'In rep 4 the last mark is at 50, where the others end at 100: a touch was probably missed.',
    ],
    [
      'halfway taken late',
      laps(50, 3450, 3050),
      [1, 'late-touch', [3155, 3345]],
      'In rep 4 laps 1 and 2 took 34.50 and 30.50 where 31.6 and 33.5 are usual: the touch between them was probably taken 3.0 s late.',
    ],
    [
      'halfway taken early',
      laps(50, 2850, 3650),
      [1, 'early-touch', [3155, 3345]],
      'In rep 4 laps 1 and 2 took 28.50 and 36.50 where 31.6 and 33.5 are usual: the touch between them was probably taken 3.1 s early.',
    ],
    [
      'the halves swapped',
      laps(50, 3350, 3150),
      [1, 'swapped', [3150, 3350]],
      'In rep 4 laps 1 and 2 took 33.50 and 31.50 where 31.6 and 33.5 are usual: they were probably swapped, or the touch between them was taken late or early.',
    ],
    [
      'a minute too many',
      laps(50, 3150, 9350),
      [2, 'typed', [3150, 3350]],
      'In rep 4 lap 2 took 1:33.50 where 33.5 is usual: it was probably typed with a minute too many.',
    ],
    [
      'ten seconds too many',
      laps(50, 4150, 3350),
      [1, 'typed', [3150, 3350]],
      'In rep 4 lap 1 took 41.50 where 31.6 is usual: it was probably typed with ten seconds too many.',
    ],
    [
      'ten seconds too few',
      laps(50, 3150, 2350),
      [2, 'typed', [3150, 3350]],
      'In rep 4 lap 2 took 23.50 where 33.5 is usual: it was probably typed with ten seconds too few.',
    ],
    [
      'the time of the whole rep in place of its second half',
      laps(50, 3150, 6500),
      [2, 'typed', [3150, 3350]],
      'In rep 4 lap 2 took 1:05.00 where 33.5 is usual: it was probably typed with the time since the start of the rep.',
    ],
    [
      'a touch between the walls',
      laps(50, 1200, 1950, 3350),
      [1, 'extra-touch', [3150, 3350]],
      'In rep 4 there is one lap too many, and laps 1 and 2 together took 31.50: a touch was probably taken where there is no wall.',
    ],
    [
      'a touch after the finish',
      laps(50, 3150, 3350, 4000),
      [3, 'extra-touch', [3150, 3350]],
      'In rep 4 there is one lap too many, and the others are as usual: a touch after the finish was probably taken.',
    ],
    [
      'touches of another rep',
      laps(50, 3150, 3350, 4000, 3000),
      [4, 'extra-touch', null],
      'In rep 4 the last mark is at 200, where the others end at 100: a touch was probably taken that is not of this rep.',
    ],
    [
      'what nobody swims',
      laps(50, 1200, 1300),
      [1, 'impossible', null],
      'In rep 4 lap 1 took 12.00 over 50, faster than anyone swims.',
    ],
    [
      'what no common slip explains',
      laps(50, 3150, 5550),
      [2, 'odd-lap', null],
      'In rep 4 lap 2 took 55.50 where 33.5 is usual, and no common slip explains it.',
    ],
  ])('%s', (_, rep, wanted, why) => {
    const set = with4th(rep);
    expect(only(set)).toEqual(wanted);
    expect(findSetSlips(set)[0]?.why).toBe(why);
  });

  test('in reps of four laps', () => {
    const reps = Array.from({ length: 6 }, (_, i) => laps(50, 3200 + i, 3400, 3420, 3380 - i));
    const with2nd = (rep: Splits) => setOf(200, reps.with(1, rep));
    expect(only(with2nd(laps(50, 3200, 3700, 3120, 3380)), 2)).toEqual([
      2,
      'late-touch',
      [3200, 3400, 3420, 3380],
    ]);
    const half = splitsFromMarks([
      { distance: 100, time: hundredths(6603) },
      { distance: 150, time: hundredths(10_023) },
      { distance: 200, time: hundredths(13_400) },
    ]);
    expect(only(with2nd(half), 2)).toEqual([1, 'missed-touch', [3203, 3400, 3420, 3377]]);
    expect(only(with2nd(laps(50, 3200, 6820, 3380)), 2)).toEqual([
      2,
      'missed-touch',
      [3200, 3400, 3420, 3380],
    ]);
  });

  test('in reps that only have a finish', () => {
    const reps = [6500, 6520, 6510, 6550, 6530].map((time) => finish(100, time));
    expect(only(setOf(100, reps.with(3, finish(100, 12_550))))).toEqual([1, 'typed', [6550]]);
    expect(only(setOf(100, reps.with(3, finish(100, 13_100))))).toEqual([1, 'missed-touch', null]);
  });

  test('in a pool of 33⅓', () => {
    const rep = laps(100 / 3, 2100, 2200, 2250);
    const set = setOf(100, [rep, rep, laps(100 / 3, 2400, 1900, 2250), rep]);
    expect(only(set, 3)).toEqual([1, 'late-touch', [2100, 2200, 2250]]);
    const [slip] = findSetSlips(set) as [SetSlip];
    expect(slip.mend).toEqual(rep);
  });
});

describe('findSetSlips keeps quiet about', () => {
  test.each<[string, readonly Splits[]]>([
    ['a set without a slip', with4th(laps(50, 3150, 3350)).reps],
    ['a rep swum a tenth slower, both halves', with4th(laps(50, 3500, 3700)).reps],
    ['a rep swum easily', with4th(laps(50, 4500, 4700)).reps],
    ['a rep with more marks than the others', with4th(laps(25, 1550, 1600, 1650, 1700)).reps],
    [
      'a set that fades by a fifth',
      Array.from({ length: 20 }, (_, i) => laps(50, 3100 + 30 * i, 3300 + 35 * i)),
    ],
  ])('%s', (_, reps) => {
    expect(findSetSlips(setOf(100, reps))).toEqual([]);
  });

  test('a rep without marks at half where most reps have none', () => {
    const reps = [finish(100, 6500), finish(100, 6510), finish(100, 6520), laps(50, 3150, 3350)];
    expect(findSetSlips(setOf(100, reps))).toEqual([]);
  });
});

describe('over random sets of twenty hundreds', () => {
  const next = numbersFrom(20_260_901);
  const bell = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  /** Reps that fade by up to a twentieth, vary by 1.5 %, and have halfway at 48.5 % ± 0.5 %. */
  const honest = (): number[][] => {
    const pace = 5800 + 2500 * next();
    const fade = 0.05 * next();
    return Array.from({ length: 20 }, (_, i) => {
      const time = Math.round(pace * (1 + (fade * i) / 20) * (1 + 0.015 * bell()));
      const first = Math.round(time * (0.485 + 0.005 * bell()));
      return [first, time - first];
    });
  };
  const slipsIn = (reps: readonly number[][]) =>
    findSetSlips(
      setOf(
        100,
        reps.map((rep) => laps(50, ...rep)),
      ),
    );

  test('at most 3 of 1000 honest sets raise an alarm', () => {
    const alarms = Array.from({ length: 1000 }, () => slipsIn(honest())).filter((it) => it.length);
    expect(alarms.length).toBeLessThanOrEqual(3);
  });

  test.each<[string, (rep: readonly number[]) => number[], number]>([
    ['halfway 3 s late', ([a = 0, b = 0]) => [a + 300, b - 300], 0.95],
    ['halfway 3 s early', ([a = 0, b = 0]) => [a - 300, b + 300], 0.95],
    ['two laps in one', ([a = 0, b = 0]) => [a + b, b], 0.99],
    ['one lap, of two in one', ([a = 0, b = 0]) => [a + b], 0.99],
    ['a minute too many', ([a = 0, b = 0]) => [a, b + 6000], 0.99],
    ['ten seconds too many', ([a = 0, b = 0]) => [a + 1000, b], 0.99],
    ['ten seconds too few', ([a = 0, b = 0]) => [a, b - 1000], 0.99],
  ])('%s is found in its rep, mended to within a second and a half', (_, slip, share) => {
    let found = 0;
    for (let i = 0; i < 300; i++) {
      const reps = honest();
      const at = Math.floor(20 * next());
      const swum = reps[at]!;
      const [only, ...more] = slipsIn(reps.with(at, slip(swum)));
      const [first, end] = only?.mend?.marks ?? [];
      const isNear =
        Math.abs((first?.time ?? 0) - swum[0]!) <= 150 &&
        Math.abs((end?.time ?? 0) - swum[0]! - swum[1]!) <= 150;
      if (only?.rep === at + 1 && isNear && more.length === 0) found++;
    }
    expect(found / 300).toBeGreaterThanOrEqual(share);
  });
});

test('with fewer than three reps alike, each is judged by itself', () => {
  const [fine, late] = [laps(50, 3150, 3350), laps(25, 1500, 1520, 2530, 510, 1530, 1520)];
  expect(findSetSlips(setOf(100, [fine, laps(50, 3150, 9350)]))).toEqual(
    findSlips(laps(50, 3150, 9350)).map((slip) => ({ rep: 2, ...slip })),
  );
  expect(findSetSlips(setOf(150, [late])).map(({ rep, lap }) => [rep, lap])).toEqual([[1, 3]]);
});

test('at most one slip a rep, in the order of the reps, each mend whole', () => {
  fc.assert(
    fc.property(swumSet, (set) => {
      fc.pre(set.reps.length > 2);
      const slips = findSetSlips(set);
      const reps = slips.map(({ rep }) => rep);
      expect(reps).toEqual([...new Set(reps)].sort((a, b) => a - b));
      for (const { mend } of slips) {
        if (mend !== null) expect(mend.marks.at(-1)?.distance).toBe(set.repDistance);
      }
    }),
  );
});

test('a set of five thousand reps is looked through', () => {
  const many = Array<Splits>(5000).fill(laps(50, 3150, 3350));
  many[4990] = laps(50, 3150, 9350);
  expect(findSetSlips(setOf(100, many)).map(({ rep }) => rep)).toEqual([4991]);
});

test('what is no set is refused', () => {
  expect(codeOf(() => findSetSlips(null as never))).toBe('wrong-shape');
  expect(codeOf(() => findSetSlips(setOf(100, [])))).toBe('too-few-reps');
  expect(codeOf(() => findSetSlips(setOf(0, [finish(100, 6500)])))).toBe('out-of-range');
  const backwards = { marks: [{ distance: 100, time: -1 as Hundredths }] };
  expect(codeOf(() => findSetSlips(setOf(100, [backwards])))).toBe('not-a-time');
});
