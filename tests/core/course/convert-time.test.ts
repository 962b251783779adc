import {
  type ConversionMethod,
  type ConvertTimeOptions,
  convertTime,
  formatTime,
  type Hundredths,
  hundredths,
  isPacingError,
  LCM,
  type Pool,
  parseTime,
  SCM,
  SCY,
  type Stroke,
  type SwimToConvert,
} from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';

const swim = (time: string | number, distance: number, stroke: Stroke, from: Pool) => ({
  time: typeof time === 'string' ? parseTime(time) : hundredths(time),
  distance,
  stroke,
  from,
});
const gain = (gainPerTurn: number, yardRatio?: number): ConvertTimeOptions => ({
  method: 'turns',
  gainPerTurn: hundredths(gainPerTurn),
  ...(yardRatio !== undefined && { yardRatio }),
});
const codes = (cautions: readonly { code: string }[]) => cautions.map(({ code }) => code);
const code = (name: string) => expect.objectContaining({ name: 'PacingError', code: name });

describe('by a collegiate table', () => {
  test('says all that the time rests on', () => {
    const conversion = convertTime(swim('3:39.15', 400, 'free', SCM), SCY);
    expect(conversion).toStrictEqual({
      time: 25_267,
      distance: 500,
      method: 'collegiate-2021-22',
      factor: 1.153,
      wayBack: false,
      source: expect.stringContaining('2021–22, 25 m to 25 yd'),
      range: null,
      cautions: [
        { code: 'converted-time', message: expect.stringMatching(/^A .*\.$/) },
        { code: 'no-range', message: expect.stringMatching(/^How .*\.$/) },
      ],
    });
  });

  test('the season is chosen by the pools, and the dropped third decimal of 2023–24 is said', () => {
    const long = convertTime({ ...swim('16:46.60', 1500, 'free', LCM), sex: 'M' }, SCY);
    expect(long.method).toBe('collegiate-2023-24');
    expect(long.source).toContain('2023–24, 50 m to 25 yd');
    expect(formatTime(long.time)).toBe('16:21.43');
    expect(codes(long.cautions)).toEqual(['converted-time', 'rounding-assumed', 'no-range']);
  });

  test('women and men have their own long-course factors; the short-course ones need no sex', () => {
    const back = swim('58.45', 100, 'back', LCM);
    expect(convertTime({ ...back, sex: 'W' }, SCY).time).toBe(5044);
    expect(convertTime({ ...back, sex: 'M' }, SCY).time).toBe(4939);
    expect(() => convertTime(back, SCY)).toThrow(code('unknown-choice'));
  });

  // The published inverse divides: 22.15 / 0.881 = 25.14. One hundredth slower still makes the cut.
  test('the way back is the slowest time that still makes the cut', () => {
    const cut = { ...swim('22.15', 50, 'free', SCY), sex: 'W' as const };
    const back = convertTime(cut, LCM);
    expect(back).toMatchObject({ time: 2515, wayBack: true, factor: 0.881, distance: 50 });
    const there = (time: number) =>
      convertTime({ ...swim(time, 50, 'free', LCM), sex: 'W' }, SCY).time;
    expect([2514, 2515, 2516].map(there)).toEqual([2214, 2215, 2216]);

    // 10.00 converts to 8.81 exactly: it does not make 8.80.
    const exact = { ...swim('8.80', 50, 'free', SCY), sex: 'W' as const };
    expect(convertTime(exact, LCM).time).toBe(999);

    const mile = { ...swim('14:37.31', 1650, 'free', SCY), sex: 'M' as const };
    expect(convertTime(mile, LCM)).toMatchObject({ time: 89_981, distance: 1500 });
  });

  test.each([
    ['no 50 backstroke was published in long course', swim(2800, 50, 'back', LCM), SCY],
    ['a 300 is no event', swim(20_000, 300, 'free', SCM), SCY],
    ['a 400 yd freestyle is no event, though 400 m is', swim(20_000, 400, 'free', SCY), SCM],
    ['nor is 500 m, though 500 yd is', swim(30_000, 500, 'free', SCM), SCY],
    ['the pairs are freestyle only', swim(40_000, 800, 'medley', SCM), SCY],
    ['25 m to 50 m has no table', swim(6500, 100, 'free', SCM), LCM],
    ['nor has a 20 yd pool', swim(6500, 100, 'free', SCM), { length: 20, unit: 'yd' } as const],
    ['nor a pool and itself', swim(6500, 100, 'free', SCY), SCY],
  ])('%s', (_, from, to) => {
    expect(() => convertTime(from, to)).toThrow(code('no-published-factor'));
  });

  test('a table asked for by name holds only between its own pools', () => {
    const from = { ...swim(6500, 100, 'free', LCM), sex: 'W' as const };
    const options = { method: 'collegiate-2021-22' } as const;
    expect(() => convertTime(from, SCY, options)).toThrow(code('no-published-factor'));
    expect(() => convertTime(from, SCM, options)).toThrow(code('no-published-factor'));
  });

  test('400 medley keeps its number', () => {
    const { time, distance } = convertTime(swim(30_000, 400, 'medley', SCM), SCY);
    expect([time, distance]).toEqual([27_180, 400]);
  });
});

describe('by turns', () => {
  test('each turn fewer adds the gain, each more takes it off', () => {
    const long = convertTime(swim('16:30.00', 1500, 'free', SCM), LCM, gain(60));
    expect(long).toMatchObject({ time: 100_800, distance: 1500, factor: 1, turnsFewer: 30 });
    const short = convertTime(swim('16:48.00', 1500, 'free', LCM), SCM, gain(60));
    expect(short).toMatchObject({ time: 99_000, turnsFewer: -30, wayBack: false });
  });

  test('a gain alone chooses the method, and no gain is refused', () => {
    const from = swim(6500, 100, 'free', SCM);
    expect(convertTime(from, LCM, { gainPerTurn: hundredths(80) }).method).toBe('turns');
    expect(() => convertTime(from, LCM, { method: 'turns' })).toThrow(code('gain-missing'));
    expect(() => convertTime(from, LCM, gain(-1))).toThrow(code('out-of-range'));
    expect(convertTime(from, LCM, gain(0)).time).toBe(6500);
  });

  test('yards become metres by the exact ratio, the pairs by theirs', () => {
    // 60.00 × 1250 / 1143 = 65.6168; 25 yd and 25 m have the same turns.
    const even = convertTime(swim('1:00.00', 100, 'free', SCY), SCM, gain(80));
    expect(even).toMatchObject({ time: 6562, factor: 1250 / 1143, turnsFewer: 0, wayBack: false });
    // 5:00.00 × 400 / 500 × 1250 / 1143 = 4:22.4672, and 8 turns fewer.
    const paired = convertTime(swim('5:00.00', 500, 'free', SCY), LCM, gain(100));
    expect(paired).toMatchObject({ time: 27_047, distance: 400, turnsFewer: 8 });
  });

  test('the way back is the slowest yard time that still converts', () => {
    const back = convertTime(swim(6562, 100, 'free', SCM), SCY, gain(80));
    expect(back).toMatchObject({ time: 6000, wayBack: true, turnsFewer: 0 });
    expect(convertTime(swim(6001, 100, 'free', SCY), SCM, gain(80)).time).toBe(6563);
    expect(convertTime(swim(27_047, 400, 'free', LCM), SCY, gain(100))).toMatchObject({
      time: 30_000,
      distance: 500,
      turnsFewer: -8,
    });
  });

  test.each([
    [0.5, undefined],
    [2_000_000, undefined],
    [100, 0.9],
    [100, 1.4],
  ])('a distance of %s and a yard ratio of %s are beyond sense', (distance, ratio) => {
    const from = swim(6500, distance, 'free', SCY);
    expect(() => convertTime(from, SCM, gain(60, ratio))).toThrow(code('out-of-range'));
  });

  test('the ends of the range are still inside it', () => {
    const outside = (time: number, perTurn: number) =>
      codes(convertTime(swim(time, 100, 'free', SCM), LCM, gain(perTurn)).cautions).includes(
        'outside-published-range',
      );
    // 60.50 gives 61.36 at the least, 60.00 gives 61.96 at the most; two turns fewer.
    expect([42, 43].map((perTurn) => outside(6050, perTurn))).toEqual([true, false]);
    expect([98, 99].map((perTurn) => outside(6000, perTurn))).toEqual([false, true]);
  });

  test('between 25 m and 50 m the range is what studies measured', () => {
    const { range, cautions } = convertTime(swim(6000, 100, 'free', SCM), LCM, gain(60));
    expect(range).toMatchObject({ low: 6085, high: 6196 });
    expect(range?.covers).toContain('1.4 % to 3.16 %');
    expect(codes(cautions)).toEqual(['converted-time', 'gain-varies']);
    const back = convertTime(swim(6000, 200, 'breast', LCM), SCM, gain(100));
    expect(back.range).toMatchObject({ low: 5748, high: 5844 });
    expect(codes(back.cautions)).toContain('outside-published-range');
    expect(codes(convertTime(swim(6000, 100, 'free', SCM), LCM, gain(0)).cautions)).toContain(
      'outside-published-range',
    );
  });

  test.each([
    swim(3000, 50, 'back', SCM),
    swim(30_000, 400, 'fly', SCM),
    swim(3000, 50, 'free', { length: 12.5, unit: 'm' }),
    swim(3000, 50, 'free', SCY),
  ])('no study, no range: $distance $stroke', (from) => {
    const { range, cautions } = convertTime(from, LCM, gain(60));
    expect(range).toBeNull();
    expect(codes(cautions)).toContain('no-range');
  });

  test('a swim that the turns would eat is refused', () => {
    for (const time of [100, 120]) {
      const short = swim(time, 100, 'free', LCM);
      expect(() => convertTime(short, SCM, gain(60))).toThrow(code('out-of-range'));
    }
    expect(convertTime(swim(121, 100, 'free', LCM), SCM, gain(60)).time).toBe(1);
  });

  test('distances must end at a wall in both pools', () => {
    const odd = { length: 100 / 3, unit: 'm' } as const;
    expect(convertTime(swim(6500, 100, 'free', odd), LCM, gain(60)).turnsFewer).toBe(1);
    expect(() => convertTime(swim(3000, 50, 'free', LCM), odd, gain(60))).toThrow(
      code('not-whole-lengths'),
    );
    expect(() => convertTime(swim(3000, 110, 'free', SCM), LCM, gain(60))).toThrow(
      code('not-whole-lengths'),
    );
    // 1500 would be whole lengths of 20 yd, the 1650 that was swum is not.
    const mile = swim(100_000, 1650, 'free', { length: 20, unit: 'yd' });
    expect(() => convertTime(mile, LCM, gain(60))).toThrow(code('not-whole-lengths'));
  });
});

describe('every method', () => {
  const route = fc.constantFrom<readonly [Pool, Pool, ConvertTimeOptions]>(
    [SCM, SCY, {}],
    [LCM, SCY, {}],
    [SCY, SCM, gain(0)],
    [SCY, LCM, gain(80)],
    [SCY, LCM, gain(80, 1.11)],
    [SCM, LCM, gain(100)],
    [{ length: 20, unit: 'yd' }, LCM, gain(63)],
  );
  const distance = fc.constantFrom(100, 200);
  const there = (time: number, d: number, [from, to, options]: readonly [Pool, Pool, object]) =>
    convertTime({ ...swim(time, d, 'fly', from), sex: 'W' }, to, options).time;
  const back = (time: number, d: number, [from, to, options]: readonly [Pool, Pool, object]) =>
    convertTime({ ...swim(time, d, 'fly', to), sex: 'W' }, from, options).time;
  const time = fc.integer({ min: 2000, max: 90_000 });

  test('a slower time never converts to a faster one', () => {
    fc.assert(
      fc.property(time, distance, route, (t, d, way) => {
        expect(there(t + 1, d, way)).toBeGreaterThanOrEqual(there(t, d, way));
        expect(back(t + 1, d, way)).toBeGreaterThanOrEqual(back(t, d, way));
      }),
    );
  });

  test('the way back converts to the cut or better, and a hundredth slower does not', () => {
    fc.assert(
      fc.property(time, distance, route, (cut, d, way) => {
        const slowest = back(cut, d, way);
        expect(there(slowest, d, way)).toBeLessThanOrEqual(cut);
        expect(there(slowest + 1, d, way)).toBeGreaterThan(cut);
      }),
    );
  });

  test('turns agree with exact fractions', () => {
    fc.assert(
      fc.property(time, fc.integer({ min: 0, max: 200 }), (t, g) => {
        // t × 1250 / 1143 to the nearest, a tie up, and two turns fewer over 100.
        const exact = (2n * BigInt(t) * 1250n + 1143n) / 2286n + 2n * BigInt(g);
        expect(there(t, 100, [SCY, LCM, gain(g)])).toBe(Number(exact));
      }),
    );
  });
});

test('anything else is refused by a PacingError, and nothing is NaN', () => {
  const pool = nearly(fc.constantFrom(SCY, SCM, LCM, { length: 20, unit: 'yd' } as const));
  const input = fc.record({
    time: nearly(fc.oneof(lap, fc.maxSafeInteger() as fc.Arbitrary<Hundredths>)),
    distance: nearly(fc.constantFrom(50, 100, 400, 500, 1650, 1e6)),
    stroke: nearly(fc.constantFrom<Stroke>('free', 'back', 'medley')),
    sex: nearly(fc.constantFrom('W' as const, 'M' as const)),
    from: pool,
  });
  const options = fc.record(
    {
      method: nearly(fc.constantFrom<ConversionMethod>('turns', 'collegiate-2021-22')),
      gainPerTurn: nearly(lap),
      yardRatio: nearly(fc.double({ min: 1, max: 1.3, noNaN: true })),
    },
    { requiredKeys: [] },
  );
  const check = (from: SwimToConvert, to: Pool, how: ConvertTimeOptions) => {
    try {
      const { time, distance, factor, range } = convertTime(from, to, how);
      for (const n of [time, range?.low ?? 0, range?.high ?? 0]) {
        expect(Number.isSafeInteger(n)).toBe(true);
      }
      expect(time).toBeGreaterThan(0);
      expect(Number.isFinite(distance * factor)).toBe(true);
    } catch (error) {
      if (!isPacingError(error)) throw error;
    }
  };
  fc.assert(fc.property(nearly(input), pool, nearly(options), check));
});
