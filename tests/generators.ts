import {
  type Hundredths,
  hundredths,
  type OpenWaterLeg,
  type PlannedSet,
  type SetItem,
  type Splits,
  type SwimManner,
  type SwumSet,
  splitsFromLaps,
  splitsFromMarks,
  type Trial,
} from 'backhalf';
import fc from 'fast-check';

// The only maker of random laps, swims and sets; each says what it covers.

/** A time or a difference, up to ten hours either way. */
export const difference = fc.integer({ min: -3_600_000, max: 3_600_000 }).map(hundredths);

/** A lap a person could swim, and some no person could: 0.01 s to 10 min. */
export const lap = fc.integer({ min: 1, max: 60_000 }).map(hundredths);

/** Pools in use, and odd ones. */
export const pool = fc.constantFrom(
  { length: 25, unit: 'yd' } as const,
  { length: 20, unit: 'yd' } as const,
  { length: 25, unit: 'm' } as const,
  { length: 50, unit: 'm' } as const,
  { length: 100 / 3, unit: 'm' } as const,
);

/** A swim of 2 to 60 even laps in a metre, yard or odd pool. */
export const swim = fc
  .tuple(fc.constantFrom(20, 25, 50, 100 / 3, 100), fc.array(lap, { minLength: 2, maxLength: 60 }))
  .map(([every, laps]) => splitsFromLaps(every, laps));

/** Marks at uneven distances, the first in the first half. */
export const unevenSwim = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 400 }), lap), { minLength: 2, maxLength: 20 })
  .map((steps) => {
    let distance = 0;
    let time = 0;
    return splitsFromMarks(
      steps.map(([d, t]) => ({ distance: (distance += d), time: hundredths((time += t)) })),
    );
  })
  .filter(({ marks }) => marks[0]!.distance * 2 <= marks.at(-1)!.distance);

const sameLaps = (count: number): fc.Arbitrary<readonly Hundredths[]> =>
  fc.array(lap, { minLength: count, maxLength: count });

/** A set of 1 to 30 reps, each with the same marks: two laps or more, so that halves can be read. */
export const swumSet: fc.Arbitrary<SwumSet> = fc
  .record({
    pool,
    count: fc.integer({ min: 1, max: 30 }),
    laps: fc.integer({ min: 2, max: 8 }),
    every: fc.constantFrom(25, 50),
    sendOff: fc.option(lap, { nil: undefined }),
  })
  .chain(({ pool: where, count, laps, every, sendOff }) =>
    fc.array(sameLaps(laps), { minLength: count, maxLength: count }).map((reps) => ({
      pool: where,
      repDistance: every * laps,
      reps: reps.map((times): Splits => splitsFromLaps(every, times)),
      ...(sendOff !== undefined && { sendOff }),
    })),
  );

/** One to six open-water legs in currents that a swimmer at 1 m/s and more gets through. */
export const openWaterLegs: fc.Arbitrary<readonly OpenWaterLeg[]> = fc.array(
  fc.record({
    distance: fc.integer({ min: 1, max: 5000 }),
    current: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
    cross: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6 },
);

/** Trials one swimmer could have swum: 2 to 6 distances, each pace at least 0.2 % slower than the last. */
export const trials: fc.Arbitrary<readonly Trial[]> = fc
  .record({
    distances: fc.uniqueArray(fc.integer({ min: 50, max: 5000 }), { minLength: 2, maxLength: 6 }),
    pace: fc.integer({ min: 40, max: 200 }),
    fades: fc.array(fc.integer({ min: 2, max: 60 }), { minLength: 6, maxLength: 6 }),
  })
  .map(({ distances, pace, fades }) => {
    let perMetre = pace;
    return [...distances]
      .sort((a, b) => a - b)
      .map((distance, i) => {
        perMetre *= 1 + fades[i]! / 1000;
        return { distance, time: hundredths(Math.round(distance * perMetre)) };
      });
  });

const hostile = {
  get marks(): never {
    throw new Error('a getter that throws');
  },
};

/** Anything at all: every kind of value JavaScript has, and objects made to break a reader. */
export const anything = fc.oneof(
  fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withSparseArray: true,
    withTypedArray: true,
  }),
  fc.double(),
  fc.string(),
  fc.constantFrom<unknown>(
    undefined,
    null,
    Number.NaN,
    Infinity,
    -Infinity,
    -0,
    1e308,
    5e-324,
    2 ** 53,
    Symbol('x'),
    10n,
    () => 1,
    hostile,
    new Proxy(
      {},
      {
        ownKeys() {
          throw new TypeError('closed');
        },
      },
    ),
    new Proxy([], {
      get() {
        throw new TypeError('closed');
      },
    }),
    Object.create(null),
    [[]],
    new Date(Number.NaN),
  ),
);

/** A value of the right kind most of the time, and anything else now and then. */
export const nearly = <T>(good: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ arbitrary: good, weight: 3 }, { arbitrary: anything as fc.Arbitrary<T>, weight: 1 });

/** A manner with one word or more. */
const swimManner: fc.Arbitrary<SwimManner> = fc
  .record(
    {
      stroke: fc.constantFrom('free', 'back', 'breast', 'fly', 'medley', 'choice'),
      kind: fc.constantFrom('swim', 'kick', 'pull', 'drill'),
      effort: fc.constantFrom('easy', 'moderate', 'fast', 'sprint'),
      within: fc.constantFrom('build', 'negative', 'even'),
      by: fc.constantFrom(25, 50),
    },
    { requiredKeys: [] },
  )
  .filter((manner) => Object.keys(manner).length > 0);

/** What is said of a part of `reps` swims whose send-off is for `distance`. */
const setDetails = (reps: number, distance: number) =>
  fc
    .record({
      manner: fc.option(swimManner, { nil: {} }),
      parity: fc.record({ odd: swimManner, even: swimManner }, { requiredKeys: [] }),
      over: fc.constantFrom(
        {},
        { over: { shape: 'ascend' } as const },
        { over: { shape: 'best average' } as const },
        { over: { shape: 'descend', ...(reps > 1 && { pattern: [1, reps] }) } as const },
        { over: { shape: 'descend', ...(reps > 3 && { pattern: [2, 4] }) } as const },
        {
          over: {
            shape: 'ascend',
            ...(reps % 2 === 0 && { pattern: [reps / 2, reps / 2] }),
          } as const,
        },
      ),
      // From the shortest send-off that is one, to four times as long.
      interval: fc.oneof(
        fc.constant({}),
        fc.record({ rest: fc.integer({ min: 0, max: 30_000 }).map(hundredths) }),
        // Ten hours at most.
        distance > 18_000
          ? fc.constant({})
          : fc.record({
              sendOffs: fc.array(
                fc.integer({ min: distance * 50, max: distance * 200 }).map(hundredths),
                { minLength: 1, maxLength: 3 },
              ),
            }),
      ),
    })
    .map(({ manner, parity, over, interval }) => ({ ...manner, ...parity, ...over, ...interval }));

/** One distance or a ladder, up to twelve times. */
const setSwims: fc.Arbitrary<SetItem> = fc
  .record({
    reps: fc.integer({ min: 1, max: 12 }),
    distances: fc.oneof(
      fc.constantFrom(25, 50, 75, 100, 200, 400, 1500, 33).map((distance) => [distance]),
      fc.array(fc.constantFrom(50, 100, 200), { minLength: 2, maxLength: 4 }),
    ),
  })
  .chain(({ reps, distances }) => {
    const [distance = 0, ...others] = distances;
    const target = fc.integer({ min: distance * 50, max: distance * 200 }).map(hundredths);
    return fc
      .tuple(
        setDetails(reps * distances.length, Math.max(...distances)),
        fc.option(target, { nil: undefined }),
      )
      .map(([details, time]) => ({
        type: 'swims' as const,
        reps,
        distances,
        ...details,
        ...(time !== undefined && others.length === 0 && { target: time }),
      }));
  });

const lengthOf = (item: SetItem): { reps: number; distance: number } => {
  const parts =
    item.type === 'swims'
      ? item.distances.map((distance) => ({ reps: 1, distance }))
      : item.items.map(lengthOf);
  const times = item.type === 'swims' ? item.reps : item.rounds;
  return parts.reduce(
    (sum, part) => ({
      reps: sum.reps + times * part.reps,
      distance: sum.distance + times * part.distance,
    }),
    { reps: 0, distance: 0 },
  );
};

/** Rounds of up to three parts, one in three of them a broken swim. */
const setRounds = (part: fc.Arbitrary<SetItem>): fc.Arbitrary<SetItem> =>
  fc
    .record({
      rounds: fc.integer({ min: 1, max: 3 }),
      items: fc.array(part, { minLength: 1, maxLength: 3 }),
      broken: fc.integer({ min: 0, max: 2 }),
    })
    .chain(({ rounds, items, broken }) => {
      const once = lengthOf({ type: 'rounds', rounds: 1, items });
      return setDetails(once.reps * rounds, once.distance).map((details) => ({
        type: 'rounds' as const,
        rounds,
        items,
        ...details,
        ...(broken === 0 && once.distance <= 100_000 && { broken: once.distance }),
      }));
    });

const setItem = fc.oneof(
  { arbitrary: setSwims, weight: 3 },
  { arbitrary: setRounds(setSwims), weight: 2 },
  { arbitrary: setRounds(fc.oneof(setSwims, setRounds(setSwims))), weight: 1 },
);

const setLine: fc.Arbitrary<SetItem> = fc
  .tuple(setItem, fc.constantFrom('', '', 'lane 3 leaves first', '// #1', 'all on 10"'))
  .map(([item, comment]) => (comment === '' ? item : { ...item, comment }));

/** A practice of one to three blocks, the first with or without a heading; nested two deep. */
export const plannedSet: fc.Arbitrary<PlannedSet> = fc
  .array(
    fc.record({
      name: fc.constantFrom('warm-up', 'pre-set', 'main set', 'cool-down'),
      items: fc.array(setLine, { minLength: 1, maxLength: 4 }),
    }),
    { minLength: 1, maxLength: 3 },
  )
  .chain((blocks) =>
    fc.boolean().map((named) => ({
      blocks: blocks.map((block, i) => (i > 0 || named ? block : { ...block, name: null })),
      notes: [],
    })),
  )
  .filter(({ blocks }) => {
    const reps = blocks.flatMap(({ items }) => items.map((item) => lengthOf(item).reps));
    return reps.reduce((sum, n) => sum + n, 0) <= 10_000;
  });
