import {
  findSlips,
  type Hundredths,
  hundredths,
  lapsOf,
  type Slip,
  type Splits,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { swim, unevenSwim } from '../../generators.js';
import { numbersFrom } from '../../random.js';
import { codeOf } from '../../refusal.js';

const laps = (every: number, ...times: number[]) => splitsFromLaps(every, times.map(hundredths));
const marks = (...pairs: readonly (readonly [number, number])[]) =>
  splitsFromMarks(pairs.map(([distance, time]) => ({ distance, time: hundredths(time) })));
const mended = ({ mend }: Slip) => mend && lapsOf(mend);

/** The only slip: its lap, its kind and the laps once it is mended. */
function only(swum: Splits) {
  const slips = findSlips(swum);
  expect(slips).toHaveLength(1);
  const [slip] = slips as [Slip];
  return [slip.lap, slip.kind, mended(slip)];
}

describe('findSlips names the lap, the kind and the mend', () => {
  test.each<[string, Splits, unknown[]]>([
    [
      'a touch taken late',
      laps(50, 2849, 3017, 3020, 4046, 2043, 3034, 3032),
      [4, 'late-touch', [2849, 3017, 3020, 3045, 3044, 3034, 3032]],
    ],
    [
      'a touch taken early',
      laps(50, 2849, 3017, 3020, 2745, 3344, 3034, 3032),
      [4, 'early-touch', [2849, 3017, 3020, 3045, 3044, 3034, 3032]],
    ],
    [
      'the first touch taken late, which takes the dive away',
      laps(50, 3310, 2545, 3120, 3055),
      [1, 'late-touch', [2809, 3046, 3120, 3055]],
    ],
    [
      'the last touch but the finish, before a sprint',
      laps(50, 2849, 3017, 3020, 3046, 3043, 3340, 2560),
      [6, 'late-touch', expect.anything()],
    ],
    [
      'two laps in one',
      laps(50, 2849, 3017, 6060, 3040, 3030),
      [3, 'missed-touch', [2849, 3017, 3030, 3030, 3040, 3030]],
    ],
    [
      'two laps in one at the start',
      laps(50, 5866, 3020, 3040, 3030),
      [1, 'missed-touch', expect.anything()],
    ],
    [
      'one lap in two',
      laps(25, 1400, 1500, 700, 810, 1500, 1520),
      [3, 'extra-touch', [1400, 1500, 1510, 1500, 1520]],
    ],
    [
      'the first two swapped, the dive with them',
      laps(50, 3045, 2810, 3120, 3055),
      [1, 'swapped', [2810, 3045, 3120, 3055]],
    ],
    [
      'two of uneven length swapped',
      marks([50, 2800], [100, 9000], [200, 12_000], [300, 18_200]),
      [2, 'swapped', [2800, 3000, 6200, 6200]],
    ],
    [
      'ten seconds too many',
      laps(50, 3000, 3100, 4110, 3120),
      [3, 'typed', [3000, 3100, 3110, 3120]],
    ],
    [
      'ten seconds too few',
      laps(50, 3000, 3100, 2110, 3120),
      [3, 'typed', [3000, 3100, 3110, 3120]],
    ],
    ['a minute too many', laps(50, 3150, 9350), [2, 'typed', [3150, 3350]]],
    ['a minute too many in the first of two', laps(50, 9150, 3350), [1, 'typed', [3150, 3350]]],
    ['a minute too few', laps(100, 6600, 7100, 1150, 7200), [3, 'typed', [6600, 7100, 7150, 7200]]],
    [
      'two digits swapped',
      laps(50, 3000, 3100, 1311, 3120),
      [3, 'typed', [3000, 3100, 3111, 3120]],
    ],
    [
      'two digits of a time over a minute swapped',
      laps(200, 12_300, 12_350, 16_000, 12_450),
      [3, 'typed', [12_300, 12_350, 12_400, 12_450]],
    ],
    ['the point too far left', laps(50, 315, 3350), [1, 'typed', [3150, 3350]]],
    ['the point too far right', laps(50, 3000, 31_100, 3120), [2, 'typed', [3000, 3110, 3120]]],
    ['what nobody swims', laps(50, 1500), [1, 'impossible', null]],
    ['what no common slip explains', laps(50, 3000, 3100, 5100, 3120), [3, 'odd-lap', null]],
    [
      'a swim with long laps between short ones',
      marks([50, 2800], [100, 5900], [200, 12_700], [300, 18_300], [400, 24_700]),
      [3, 'late-touch', [2800, 3100, 6200, 6200, 6400]],
    ],
  ])('%s', (_, swum, wanted) => {
    expect(only(swum)).toEqual(wanted);
  });

  test('why is one sentence with the times a coach would look at', () => {
    const why = (swum: Splits) => findSlips(swum).map((slip) => slip.why);
    expect(why(laps(50, 2849, 3017, 3020, 4046, 2043, 3034, 3032))).toEqual([
      'Laps 4 and 5 took 40.46 and 20.43 where 30.3 and 30.3 are usual: the touch between them was probably taken 10.0 s late.',
    ]);
    expect(why(laps(50, 2849, 3017, 6060, 3040, 3030))).toEqual([
      'Lap 3 took 1:00.60, about twice the usual 30.3: a touch was probably missed, and two laps stand in one.',
    ]);
    expect(why(laps(25, 1400, 1500, 700, 810, 1500, 1520))).toEqual([
      'Laps 3 and 4 took 0:07.00 and 0:08.10, together one usual lap of 15.0: a touch was probably taken where there is no wall.',
    ]);
    expect(why(laps(50, 1500))).toEqual(['Lap 1 took 15.00 over 50, faster than anyone swims.']);
    expect(why(laps(50, 3000, 3100, 5100, 3120))).toEqual([
      'Lap 3 took 51.00 where 31.7 is usual, and no common slip explains it.',
    ]);
    expect(why(laps(50, 3045, 2810, 3120, 3055))).toEqual([
      'Laps 1 and 2 took 30.45 and 28.10 where 28.5 and 30.9 are usual: they were probably swapped, or the touch between them was taken late.',
    ]);
  });

  test('where a medley changes its stroke, it says so', () => {
    const [slip] = findSlips(laps(50, 2520, 2900, 3350, 2800)) as [Slip];
    expect(slip.why).toMatch(/late, unless the stroke changes there\.$/);
  });

  test('several slips come in the order of their laps, each mended by itself', () => {
    const even = Array<number>(4).fill(3100);
    const swum = laps(50, ...even, 4110, ...even, 3400, 2810, ...even, 6220, ...even);
    expect(findSlips(swum).map(({ lap, kind }) => [lap, kind])).toEqual([
      [5, 'typed'],
      [10, 'late-touch'],
      [16, 'missed-touch'],
    ]);
    const [typed] = findSlips(swum) as [Slip];
    expect(findSlips(typed.mend!).map(({ lap }) => lap)).toEqual([10, 16]);
  });
});

describe('findSlips keeps quiet about', () => {
  test.each<[string, Splits]>([
    ['one lap', laps(50, 3150)],
    ['the two laps of a practice rep', laps(50, 3150, 3350)],
    ['two laps that differ by a third', laps(50, 3150, 4150)],
    ['a dive, a fade and a sprint', laps(50, 2610, 2840, 2950, 3010, 3080, 3120, 3130, 2880)],
    ['a swim off a push', laps(50, 3320, 3310, 3300, 3340, 3350, 3340)],
    [
      'odd and even laps that differ, as where water runs',
      laps(50, ...Array(15).fill([3000, 3090]).flat()),
    ],
    ['drill and swim by turns, from a push', laps(25, 1800, 1500, 1800, 1500)],
    ['swim and drill by turns, from a dive', laps(50, 2760, 3600, 3000, 3600)],
    [
      'drill and swim by turns over eight laps',
      laps(25, 1500, 1800, 1500, 1800, 1500, 1800, 1500, 1800),
    ],
    ['the strokes of a medley of four laps', laps(50, 2800, 3300, 3800, 3100)],
    ['the strokes of a medley of eight', laps(50, 2800, 3200, 3600, 3500, 4050, 4100, 3200, 3100)],
    [
      'marks at the start, at 50 and at whole hundreds',
      marks([15, 600], [50, 2700], [100, 5800], [200, 12_200]),
    ],
    ['longer and longer laps', marks([50, 2800], [100, 5900], [200, 12_200], [400, 25_000])],
    [
      'a hand on the watch, a few tenths late in a short pool',
      laps(25, 1400, 1500, 1530, 1470, 1500, 1510),
    ],
  ])('%s', (_, swum) => {
    expect(findSlips(swum)).toEqual([]);
  });

  test('all but 5 of 1000 fading swims whose laps vary by 1 %', () => {
    const next = numbersFrom(11);
    let alarms = 0;
    for (let i = 0; i < 1000; i++) {
      const pace = 2800 + 2000 * next();
      const dive = next() < 0.5 ? 0 : 150 + 100 * next();
      const swum = Array.from({ length: 16 }, (_, n) => {
        const bell = next() + next() + next() + next() + next() + next() - 3; // spread √½
        return hundredths(
          Math.round(
            pace * (1 + (0.05 * n) / 16) * (1 + 0.01 * Math.SQRT2 * bell) - (n ? 0 : dive),
          ),
        );
      });
      if (findSlips(splitsFromLaps(50, swum)).length > 0) alarms++;
    }
    expect(alarms).toBeLessThanOrEqual(5);
  });
});

describe('the mend', () => {
  test('keeps a pool of 33⅓ in step', () => {
    const [slip] = findSlips(laps(100 / 3, 2000, 2100, 2110, 4200, 2110, 2100)) as [Slip];
    expect(slip.mend?.marks.map(({ distance }) => distance)).toEqual([
      33.333333, 66.666667, 100, 133.333333, 166.666667, 200, 233.333333,
    ]);
  });

  test('changes the laps of the slip and no other', () => {
    fc.assert(
      fc.property(fc.oneof(swim, unevenSwim), (swum) => {
        const before = lapsOf(swum);
        for (const slip of findSlips(swum)) {
          if (slip.mend === null) continue;
          const after = lapsOf(slip.mend);
          const { length } = before;
          expect(after.slice(0, slip.lap - 1)).toEqual(before.slice(0, slip.lap - 1));
          const behind = length - slip.lap - 1;
          if (behind > 0) expect(after.slice(-behind)).toEqual(before.slice(-behind));
        }
      }),
    );
  });

  test('of a touch or a swap leaves the time of the swim as it was', () => {
    fc.assert(
      fc.property(swim, (swum) => {
        for (const { kind, mend } of findSlips(swum)) {
          if (!/touch|swapped/.test(kind) || mend === null) continue;
          expect(mend.marks.at(-1)?.time).toBe(swum.marks.at(-1)?.time);
        }
      }),
    );
  });
});

test('at most twenty slips are told', () => {
  const one = [3000, 3100, 3050, 3060, 4090, 3080];
  const many = Array(50).fill(one).flat() as Hundredths[];
  expect(findSlips(splitsFromLaps(50, many))).toHaveLength(20);
});

test('a swim of twenty thousand laps is looked through', () => {
  const even = Array<Hundredths>(20_000).fill(hundredths(3000));
  even[19_990] = hundredths(4000);
  expect(findSlips(splitsFromLaps(50, even)).map(({ lap }) => lap)).toEqual([19_991]);
});

test('times as large as can be are told of, not refused', () => {
  const most = Number.MAX_SAFE_INTEGER;
  expect(findSlips(marks([1, most - 2], [2, most])).map(({ lap }) => lap)).toEqual([1]);
  expect(findSlips(marks([1, 1], [2, most])).map(({ kind, mend }) => [kind, mend])).toEqual([
    ['odd-lap', null],
  ]);
  const far = marks([1e-6, most - 200_000], [5e8, most - 100_000], [1e9 - 1, most]);
  expect(findSlips(far).every(({ why }) => why.endsWith('.'))).toBe(true);
});

test('what is no swim is refused', () => {
  expect(codeOf(() => findSlips(undefined as never))).toBe('wrong-shape');
  expect(codeOf(() => findSlips({ marks: [] }))).toBe('too-few-laps');
});
