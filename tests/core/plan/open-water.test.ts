import {
  formatTime,
  type Hundredths,
  hundredths,
  isPacingError,
  type OpenWaterLeg,
  type OpenWaterOptions,
  planOpenWater,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly, openWaterLegs } from '../../generators.js';

const outAndBack = (distance: number, current: number): readonly OpenWaterLeg[] => [
  { distance, current: -current },
  { distance, current },
];
const code = (name: string) => expect.objectContaining({ name: 'PacingError', code: name });

describe('an even effort', () => {
  test('out against a current and back with it', () => {
    const plan = planOpenWater(outAndBack(750, 0.25), { speed: 1.25 });
    expect(plan.halfway).toEqual({ distance: 750, time: 75_000 });
    expect(plan.rows).toEqual([
      {
        leg: 1,
        distance: 750,
        time: 75_000,
        elapsed: 75_000,
        swimSpeed: 1.25,
        groundSpeed: 1,
        heading: 0,
      },
      {
        leg: 2,
        distance: 750,
        time: 50_000,
        elapsed: 125_000,
        swimSpeed: 1.25,
        groundSpeed: 1.5,
        heading: 0,
      },
    ]);
    expect(plan).toMatchObject({
      time: 125_000,
      speed: 1.25,
      stillWater: 120_000,
      currentCost: 5000,
    });
  });

  test('a pace is the speed it comes to', () => {
    const pace = planOpenWater(outAndBack(750, 0.25), { pace: hundredths(8000) });
    expect(pace).toEqual(planOpenWater(outAndBack(750, 0.25), { speed: 1.25 }));
  });

  test('a goal asks for the speed that meets it', () => {
    const plan = planOpenWater(outAndBack(750, 0.25), { goal: hundredths(125_000) });
    expect(plan.speed).toBeCloseTo(1.25, 12);
    expect(plan.time).toBe(125_000);
  });

  test('a leg across halfway is cut there', () => {
    const triangle = [
      { distance: 400 },
      { distance: 500, current: 0.2 },
      { distance: 300, cross: -0.6 },
    ];
    const { rows, halfway } = planOpenWater(triangle, { speed: 1 });
    expect(rows.map(({ leg, distance }) => [leg, distance])).toEqual([
      [1, 400],
      [2, 200],
      [2, 300],
      [3, 300],
    ]);
    expect(halfway).toEqual({ distance: 600, time: rows[1]!.elapsed });
    expect(rows[3]!.groundSpeed).toBeCloseTo(0.8, 12); // 6-8-10
    expect(rows[3]!.heading).toBeCloseTo(36.8699, 4);
  });
});

describe('a negative split', () => {
  test('shows later at the turn buoy, by half of it, and finishes on the goal', () => {
    const goal = hundredths(125_000);
    const plan = planOpenWater(outAndBack(750, 0.25), { goal, secondHalf: hundredths(-2000) });
    expect(formatTime(plan.halfway.time)).toBe('12:40.00');
    expect(plan.time).toBe(goal);
    expect(plan.rows[0]!.swimSpeed).toBeLessThan(plan.speed);
    expect(plan.rows[1]!.swimSpeed).toBeGreaterThan(plan.speed);
    // Speed made good is distance over time: 750 m in 760 s and in 490 s.
    expect(plan.rows.map((row) => row.groundSpeed)).toEqual([
      expect.closeTo(750 / 760, 10),
      expect.closeTo(750 / 490, 10),
    ]);
  });

  test('in still water the halves differ by what was asked', () => {
    const options = { goal: hundredths(120_000), secondHalf: hundredths(-1000) };
    const { rows } = planOpenWater([{ distance: 1500 }], options);
    expect(rows.map(({ time }) => time)).toEqual([60_500, 59_500]);
  });
});

describe('what cannot be swum', () => {
  test.each([
    [
      'a current as fast as the swimmer',
      outAndBack(750, 1.25),
      { speed: 1.25 },
      'current-too-strong',
    ],
    [
      'a cross current as fast as the swimmer',
      [{ distance: 100, cross: 1.25 }],
      { speed: 1.25 },
      'current-too-strong',
    ],
    ['water no swimmer gets through', outAndBack(750, 4), { goal: 100_000 }, 'current-too-strong'],
    ['a goal faster than swimmers', outAndBack(750, 0), { goal: 30_000 }, 'out-of-range'],
    [
      'a goal slower than drifting',
      [{ distance: 100, current: 1 }],
      { goal: 30_000 },
      'out-of-range',
    ],
    [
      'a half’s own time for a difference',
      outAndBack(750, 0),
      { goal: 120_000, secondHalf: 59_000 },
      'out-of-range',
    ],
    ['no leg', [], { speed: 1.25 }, 'wrong-shape'],
    ['nothing to start from', outAndBack(750, 0), {}, 'wrong-shape'],
    ['two things to start from', outAndBack(750, 0), { speed: 1, goal: 150_000 }, 'wrong-shape'],
    ['a leg without length', [{ distance: 0 }], { speed: 1 }, 'out-of-range'],
    ['a goal of weeks', outAndBack(750, 1), { goal: 1e8 }, 'out-of-range'],
    [
      'a cross current as fast as the swimmer, whatever helps along',
      [{ distance: 100, cross: 1.25, current: 0.5 }],
      { speed: 1.25 },
      'current-too-strong',
    ],
    ['a pace of no swimmer', outAndBack(750, 0), { pace: 1000 }, 'out-of-range'],
  ])('%s', (_, legs, options, wanted) => {
    expect(() => planOpenWater(legs, options as OpenWaterOptions)).toThrow(code(wanted));
  });

  test('the leg that stops the swimmer is named', () => {
    const legs = [{ distance: 100 }, { distance: 100, current: -1.3 }];
    expect(() => planOpenWater(legs, { speed: 1.25 })).toThrow(/^On leg 2 .*1\.25 m\/s/);
  });
});

test('open water never goes without its cautions', () => {
  const { cautions } = planOpenWater([{ distance: 1500 }], { speed: 1.25 });
  expect(cautions.map((each) => each.code)).toEqual([
    'open-water-safety',
    'current-assumed',
    'straight-line',
  ]);
});

describe('every plan', () => {
  const speed = fc.double({ min: 1.2, max: 2, noNaN: true });

  test('rows add up to the finish, and the goal is met to the hundredth', () => {
    fc.assert(
      fc.property(openWaterLegs, speed, fc.integer({ min: -20, max: 20 }), (legs, v, split) => {
        const even = planOpenWater(legs, { speed: v });
        const secondHalf = hundredths(Math.trunc((even.time * split) / 500)); // up to 4 %
        const plan = planOpenWater(legs, { goal: even.time, secondHalf });
        expect(plan.time).toBe(even.time);
        expect(plan.rows.reduce((sum, { time }) => sum + time, 0)).toBe(plan.time);
        expect(plan.rows.reduce((sum, row) => sum + row.distance, 0)).toBeCloseTo(
          legs.reduce((sum, leg) => sum + leg.distance, 0),
          4,
        );
        const shift = plan.halfway.time - even.halfway.time;
        expect(Math.abs(shift + secondHalf / 2)).toBeLessThanOrEqual(2);
      }),
    );
  });

  test('out and back in a current is never free', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 5000 }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (distance, current) => {
          const { currentCost } = planOpenWater(outAndBack(distance, current), { speed: 1 });
          expect(currentCost).toBeGreaterThan(0);
          const across = [
            { distance, cross: current },
            { distance, cross: -current },
          ];
          expect(planOpenWater(across, { speed: 1 }).currentCost).toBeGreaterThan(0);
        },
      ),
    );
  });
});

test('anything else is refused by a PacingError, and nothing is NaN', () => {
  const number = nearly(fc.double({ min: -2, max: 2, noNaN: true }));
  const leg = nearly(
    fc.record(
      {
        distance: nearly(fc.double({ min: 1, max: 1e6, noNaN: true })),
        current: number,
        cross: number,
      },
      { requiredKeys: ['distance'] },
    ),
  );
  const time = nearly(lap) as fc.Arbitrary<Hundredths>;
  const options = nearly(
    fc.oneof(
      fc.record({ speed: number, secondHalf: time }, { requiredKeys: ['speed'] }),
      fc.record({ pace: time }),
      fc.record({ goal: time, secondHalf: time }, { requiredKeys: ['goal'] }),
    ),
  );
  const course = nearly(fc.array(leg, { maxLength: 5 }));
  fc.assert(
    fc.property(course, options, (legs, how) => {
      try {
        const plan = planOpenWater(legs, how as OpenWaterOptions);
        const numbers = JSON.stringify(plan, (_, n) =>
          typeof n === 'number' && !Number.isFinite(n) ? 'bad' : n,
        );
        expect(numbers).not.toContain('"bad"');
        expect(Number.isSafeInteger(plan.time) && Number.isSafeInteger(plan.currentCost)).toBe(
          true,
        );
      } catch (error) {
        if (!isPacingError(error)) throw error;
      }
    }),
  );
});
