import { groupLanes, hundredths, type LaneObjective, type LaneOptions, restOn } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';
import { numbersFrom, seed } from '../../random.js';
import { codeOf, refusal } from '../../refusal.js';
import { isSound } from '../../sound.js';

const objectives = [
  'largest-spread',
  'sum-of-spreads',
  'total-wait',
  'least-squares',
] as const satisfies readonly LaneObjective[];

const squad = (paces: readonly number[]) =>
  paces.map((pace, i) => ({ name: `Swimmer ${i + 1}`, pace: hundredths(pace) }));
const sizes = (paces: readonly number[], options: LaneOptions) =>
  groupLanes(squad(paces), options).lanes.map(({ swimmers }) => swimmers.length);

/** What one lane costs, straight from the definition. */
function costOf(lane: readonly number[], objective: LaneObjective): number {
  const slowest = Math.max(...lane);
  if (objective === 'total-wait') return lane.reduce((sum, pace) => sum + slowest - pace, 0);
  if (objective !== 'least-squares') return slowest - Math.min(...lane);
  const mean = lane.reduce((sum, pace) => sum + pace, 0) / lane.length;
  return lane.reduce((sum, pace) => sum + (pace - mean) ** 2, 0);
}

function measure(lanes: readonly (readonly number[])[], objective: LaneObjective): number {
  const costs = lanes.map((lane) => costOf(lane, objective));
  if (objective === 'largest-spread') return Math.max(...costs);
  return costs.reduce((sum, cost) => sum + cost, 0);
}

/** By brute force: the least value over every way of putting swimmers into lanes, sorted or not. */
function leastOfAll(
  paces: readonly number[],
  lanes: number,
  most: number,
  objective: LaneObjective,
): number {
  let least = Infinity;
  const place = (next: number, filled: number[][]): void => {
    const pace = paces[next];
    if (pace === undefined) {
      least = Math.min(least, measure(filled, objective));
      return;
    }
    for (const lane of filled) {
      if (lane.length === most) continue;
      lane.push(pace);
      place(next + 1, filled);
      lane.pop();
    }
    if (filled.length < lanes) place(next + 1, [...filled.map((lane) => [...lane]), [pace]]);
  };
  place(0, []);
  return least;
}

/** Every way of cutting a row of so many into so many lanes, as sizes. */
function cuts(count: number, lanes: number, most: number): readonly (readonly number[])[] {
  if (lanes === 0) return count === 0 ? [[]] : [];
  return Array.from({ length: Math.min(most, count) }, (_, i) => i + 1).flatMap((size) =>
    cuts(count - size, lanes - 1, most).map((rest) => [size, ...rest]),
  );
}

/** A squad that fits its lanes, some only just; with few paces, so that ties are common. */
const squadsOf = (most: number) =>
  fc
    .record({
      paces: fc.array(fc.integer({ min: 6000, max: 6012 }), { minLength: 1, maxLength: most }),
      lanes: fc.integer({ min: 1, max: 5 }),
      slack: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ paces, lanes, slack }) => ({
      paces,
      lanes,
      maxPerLane: Math.ceil(paces.length / lanes) + slack,
    }));

describe('groupLanes', () => {
  test.each(objectives)('%s: no assignment at all does better', (objective) => {
    fc.assert(
      fc.property(squadsOf(7), ({ paces, lanes, maxPerLane }) => {
        const plan = groupLanes(squad(paces), { lanes, maxPerLane, objective });
        const least = leastOfAll(paces, lanes, maxPerLane, objective);
        expect(plan.cost).toBeCloseTo(least, 9);
        const grouped = plan.lanes.map(({ swimmers }) => swimmers.map(({ pace }) => pace));
        expect(measure(grouped, objective)).toBeCloseTo(least, 9);
      }),
      { numRuns: 200 },
    );
  });

  test.each(['largest-spread', 'sum-of-spreads', 'total-wait'] as const)(
    '%s: of equals, the most even lanes, then the smallest last ones',
    (objective) => {
      fc.assert(
        fc.property(squadsOf(14), ({ paces, lanes, maxPerLane }) => {
          const sorted = [...paces].sort((a, b) => a - b);
          const used = Math.min(lanes, paces.length);
          const ranked = cuts(paces.length, used, maxPerLane).map((cut) => {
            let from = 0;
            const groups = cut.map((size) => sorted.slice(from, (from += size)));
            const unevenness = cut.reduce((sum, size) => sum + size ** 2, 0);
            return { cut, key: [measure(groups, objective), unevenness, ...cut.toReversed()] };
          });
          const best = ranked.reduce((a, b) => (earlier(b.key, a.key) ? b : a));
          expect(sizes(paces, { lanes, maxPerLane, objective })).toEqual(best.cut);
        }),
        { numRuns: 300 },
      );
    },
  );

  function earlier(a: readonly number[], b: readonly number[]): boolean {
    const at = a.findIndex((value, i) => value !== b[i]);
    return at >= 0 && a[at]! < b[at]!;
  }

  test('everyone swims once, fast to slow, and nobody is past the cap', () => {
    const paces = fc.array(lap, { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(paces, fc.integer({ min: 1, max: 8 }), (all, lanes) => {
        const maxPerLane = Math.ceil(all.length / lanes) + 1;
        const { lanes: groups } = groupLanes(squad(all), { lanes, maxPerLane });
        const placed = groups.flatMap(({ swimmers }) => swimmers);
        expect(placed.map(({ pace }) => pace)).toEqual([...all].sort((a, b) => a - b));
        expect(new Set(placed.map(({ name }) => name)).size).toBe(all.length);
        expect(groups.length).toBe(Math.min(lanes, all.length));
        for (const { swimmers, spread, sendOff } of groups) {
          expect(swimmers.length).toBeLessThanOrEqual(maxPerLane);
          expect(spread).toBe(swimmers.at(-1)!.pace - swimmers[0]!.pace);
          expect(sendOff).toBeNull();
        }
      }),
    );
  });

  test('swimmers of one pace are spread evenly and keep their order', () => {
    const { lanes } = groupLanes(squad(Array(10).fill(6500)), { lanes: 4 });
    expect(lanes.map(({ swimmers }) => swimmers.map(({ name }) => name))).toEqual([
      ['Swimmer 1', 'Swimmer 2', 'Swimmer 3'],
      ['Swimmer 4', 'Swimmer 5', 'Swimmer 6'],
      ['Swimmer 7', 'Swimmer 8'],
      ['Swimmer 9', 'Swimmer 10'],
    ]);
  });

  test('the send-off of a lane gives everyone at least the wanted rest, and not a step more', () => {
    const paces = fc.array(lap, { minLength: 1, maxLength: 20 });
    const rest = fc.integer({ min: 0, max: 6000 }).map(hundredths);
    fc.assert(
      fc.property(paces, rest, (all, wanted) => {
        const options = { lanes: 3, repDistance: 200, rest: wanted };
        for (const { swimmers, sendOff } of groupLanes(squad(all), options).lanes) {
          const rests = swimmers.map(({ pace }) => restOn(sendOff!, hundredths(2 * pace)));
          expect(swimmers.map((swimmer) => swimmer.rest)).toEqual(rests);
          expect(Math.min(...rests)).toBeGreaterThanOrEqual(wanted);
          expect(Math.min(...rests)).toBeLessThan(wanted + 500);
        }
      }),
    );
  });

  test('the step of the send-off can be told', () => {
    const options = { lanes: 1, repDistance: 100, rest: hundredths(1500), step: hundredths(1000) };
    expect(groupLanes(squad([6700]), options).lanes[0]).toEqual({
      swimmers: [{ name: 'Swimmer 1', pace: 6700, rest: 2300 }],
      spread: 0,
      sendOff: 9000,
    });
  });

  test('says where the cap puts different paces together', () => {
    const paces = [6000, 6010, 6020, 6500, 6510, 7000];
    const codes = (options: LaneOptions) =>
      groupLanes(squad(paces), options).cautions.map(({ code }) => code);
    expect(codes({ lanes: 3, maxPerLane: 2 })).toEqual(['cap-forces-spread']);
    expect(codes({ lanes: 3, maxPerLane: 3 })).toEqual([]);
    expect(codes({ lanes: 3 })).toEqual([]);
    expect(codes({ lanes: 3, maxPerLane: 2, objective: 'least-squares' })).toHaveLength(1);
  });

  test('a squad of nobody needs no lane', () => {
    expect(groupLanes([], { lanes: 4 })).toEqual({
      lanes: [],
      objective: 'largest-spread',
      cost: 0,
      cautions: [],
    });
  });

  test('refuses a squad that does not fit', () => {
    const error = refusal(() => groupLanes(squad([6000, 6100, 6200]), { lanes: 1, maxPerLane: 2 }));
    expect(error.code).toBe('too-few-lanes');
    expect(error.message).toContain('hold 2 swimmers, not 3');
    expect(sizes([6000, 6100], { lanes: 1, maxPerLane: 2 })).toEqual([2]);
  });

  test.each([
    ['no lane', { lanes: 0 }, 'out-of-range'],
    ['a cap of nobody', { lanes: 2, maxPerLane: 0 }, 'out-of-range'],
    ['another objective', { lanes: 2, objective: 'fun' }, 'unknown-choice'],
    ['a rest without a rep', { lanes: 2, rest: hundredths(1500) }, 'out-of-range'],
    ['a rep without a rest', { lanes: 2, repDistance: 100 }, 'not-a-time'],
  ])('refuses %s', (_, options, code) => {
    expect(codeOf(() => groupLanes(squad([6000, 6100]), options as never))).toBe(code);
  });

  test('says which swimmer has no pace or no name', () => {
    const wrong = (swimmer: object) =>
      refusal(() => groupLanes([...squad([6000]), swimmer] as never, { lanes: 2 })).message;
    expect(wrong({ name: 'Teo Lark', pace: 0 })).toContain("Swimmer 2's pace");
    expect(wrong({ pace: 6100 })).toContain("Swimmer 2's name");
  });

  test('refuses an endless squad', () => {
    expect(codeOf(() => groupLanes(squad(Array(10_001).fill(6000)), { lanes: 2 }))).toBe(
      'out-of-range',
    );
  });

  test.each([
    ...objectives.map((objective) => ({ objective, lanes: 10 })),
    { objective: 'largest-spread', lanes: 1400, maxPerLane: 8 } as const,
  ])('ten thousand swimmers are placed at once: %o', (options) => {
    const random = numbersFrom(seed);
    const paces = Array.from({ length: 10_000 }, () => 5500 + Math.floor(6000 * random()));
    const start = performance.now();
    expect(sizes(paces, options)).toHaveLength(options.lanes);
    expect(performance.now() - start).toBeLessThan(2000); // some 40 ms on a quiet machine
  });

  test('answers anything with a plan or a PacingError', () => {
    const swimmers = fc.array(
      nearly(
        fc.record({ name: nearly(fc.string()), pace: nearly(fc.maxSafeNat().map(hundredths)) }),
      ),
      { maxLength: 8 },
    );
    const options = fc.record({
      lanes: nearly(fc.integer({ min: 1, max: 6 })),
      maxPerLane: nearly(fc.constant(undefined)),
      objective: nearly(fc.constantFrom(...objectives)),
      repDistance: nearly(fc.constantFrom(undefined, 100)),
      rest: nearly(lap),
      step: nearly(lap),
    });
    fc.assert(
      fc.property(nearly(swimmers), nearly(options), (who, how) =>
        isSound(() => groupLanes(who as never, how as never)),
      ),
      { numRuns: 1000 },
    );
  });
});
