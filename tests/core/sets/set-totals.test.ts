import { hundredths, LCM, type PlannedSet, parseSet, SCM, type SetItem, setTotals } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, lap, plannedSet } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const pace = hundredths(7000);
const of = (text: string, options?: Parameters<typeof setTotals>[1]) =>
  setTotals(parseSet(text), options);
const codes = (text: string, options?: Parameters<typeof setTotals>[1]) =>
  of(text, options).cautions.map(({ code }) => code);
const starts = (text: string, options?: Parameters<typeof setTotals>[1]) =>
  of(text, options).clock.map(({ start }) => start);

describe('setTotals', () => {
  test('a set on a send-off', () => {
    expect(of('10 x 100 on 1:30', { pace })).toMatchObject({
      distance: 1000,
      reps: 10,
      swimTime: 70_000,
      rest: 9 * 2000,
      duration: 9 * 9000 + 7000,
      booked: 90_000,
      cautions: [],
    });
  });

  test('a set on rest', () => {
    expect(of('8 x 50 r 15', { pace })).toMatchObject({
      swimTime: 8 * 3500,
      rest: 7 * 1500,
      duration: 8 * 3500 + 7 * 1500,
      booked: 8 * 5000,
      cautions: [],
    });
  });

  test('without a pace, a send-off still says when to leave', () => {
    const { swimTime, rest, duration, booked, clock, cautions } = of('3 x 100 on 1:30');
    expect({ swimTime, rest, duration, booked }).toEqual({
      swimTime: null,
      rest: null,
      duration: null,
      booked: 27_000,
    });
    expect(clock).toEqual(
      [0, 9000, 18_000].map((start) => ({ start, distance: 100, swim: null, rest: null })),
    );
    expect(cautions).toMatchObject([
      { code: 'pace-unknown', message: expect.stringMatching(/^3 of 3 swims/) },
    ]);
  });

  test('without a pace, a rest is still a rest', () => {
    expect(of('3 x 100 r 15')).toMatchObject({ rest: 3000, duration: null, booked: null });
    expect(starts('3 x 100 r 15')).toEqual([0, null, null]);
  });

  test('between reps of which nothing is said nobody knows the rest', () => {
    const { rest, duration, swimTime, cautions } = of('2 x 100, 2 x 50', { pace });
    expect({ rest, duration, swimTime }).toEqual({ rest: null, duration: null, swimTime: 21_000 });
    expect(cautions).toMatchObject([
      { code: 'rest-unknown', message: expect.stringMatching(/^After 3 of 4 swims/) },
    ]);
  });

  test('a single swim runs on into the next, and a caution says so', () => {
    expect(of('200 easy + 4 x 50 on 1:00', { pace })).toMatchObject({
      rest: 3 * 2500,
      booked: 14_000 + 24_000,
    });
    expect(codes('200 easy + 4 x 50 on 1:00', { pace })).toEqual(['rest-unstated']);
    expect(codes('4 x 50 on 1:00 + 200 easy', { pace })).toEqual([]);
    expect(codes('400')).toEqual(['pace-unknown']);
    expect(codes('2 x (100 r 10 + 100) r 60', { pace })).toEqual([]);
  });

  test('a missed send-off is rest below zero', () => {
    const { rest, duration, cautions } = of('3 x 100 on 1:05', { pace });
    expect({ rest, duration }).toEqual({ rest: -1000, duration: 20_000 });
    expect(cautions).toMatchObject([
      { code: 'missed-send-off', message: expect.stringMatching(/^3 of 3 swims/) },
    ]);
  });

  test.each([
    ['100 on 1:05 + 100 on 1:30', 'missed-send-off'],
    ['100 hold 1:10 r 10 + 100 kick', 'pace-unknown'],
    ['2 x 100', 'rest-unknown'],
    ['200 easy + 100', 'rest-unstated'],
  ])('%s: one swim is enough for %s', (text, code) => {
    const paces = { free: pace, easy: pace, swim: pace };
    expect(codes(text, code === 'pace-unknown' ? { paces } : { pace })).toEqual([code]);
  });

  test('rounds follow on, with rest where it is stated or given', () => {
    const rounds = '3 x (2 x 100 on 1:30)';
    expect(of(rounds, { pace })).toMatchObject({ booked: 54_000 });
    expect(of(rounds, { pace, restBetweenRounds: hundredths(6000) })).toMatchObject({
      booked: 66_000,
    });
    expect(of(`${rounds} r 60`, { pace })).toMatchObject({
      booked: 72_000,
      duration: 72_000 - 6000 - 2000,
    });
    expect(of(`${rounds} r 60`, { pace, restBetweenRounds: hundredths(1) })).toMatchObject({
      booked: 72_000,
    });
    expect(of(`${rounds} on 4:00`, { pace })).toMatchObject({
      booked: 72_000,
      rest: 3 * 2000 + 2 * 8000,
    });
  });

  test('a send-off of the round tells its start, whatever is unknown inside', () => {
    expect(starts('2 x (2 x 50 r 10) on 3:00')).toEqual([0, null, 18_000, null]);
  });

  test('each swim takes its own pace', () => {
    const paces = { kick: hundredths(10_000), easy: hundredths(8000), back: hundredths(7600) };
    const swims = (text: string) => of(text, { pace, paces }).clock.map(({ swim }) => swim);
    expect(swims('100 + 100 back + 100 back easy + 100 back easy kick')).toEqual([
      7000, 7600, 8000, 10_000,
    ]);
    expect(swims('100 back hold 1:05')).toEqual([6500]);
    expect(swims('3 x 100 r 5 odds kick evens back')).toEqual([10_000, 7600, 10_000]);
    expect(swims('2 x (100 + 100 free) r 5 odds kick evens back')).toEqual([
      10_000, 10_000, 7600, 7000,
    ]);
    expect(swims('(100 + 50 swim) kick')).toEqual([10_000, 3500]);
    expect(swims('100-50-25 r 10')).toEqual([7000, 3500, 1750]);
    expect(of('100 back + 100', { paces }).clock.map(({ swim }) => swim)).toEqual([7600, null]);
  });

  test('each lane has its send-off', () => {
    const set = '4 x 50 on :45 / :55 + 100 on 2:00';
    expect(of(set).booked).toBe(4 * 4500 + 12_000);
    expect(of(set, { lane: 2 }).booked).toBe(4 * 5500 + 12_000);
    expect(codeOf(() => of(set, { lane: 3 }))).toBe('out-of-range');
  });

  test('a pool is checked against each distance', () => {
    expect(of('4 x 75 r 10', { pool: SCM }).distance).toBe(300);
    expect(codeOf(() => of('4 x 75 r 10', { pool: LCM }))).toBe('not-whole-lengths');
  });

  test('each block has its end', () => {
    expect(of('WU 400 on 8:00\nMS 10 x 100 on 1:30\nCD 200').blocks).toEqual([
      { name: 'warm-up', distance: 400, end: 48_000 },
      { name: 'main set', distance: 1000, end: 138_000 },
      { name: 'cool-down', distance: 200, end: null },
    ]);
  });

  test('agrees with a set swum out rep by rep', () => {
    fc.assert(
      fc.property(plannedSet, lap, fc.integer({ min: 0, max: 9000 }), (set, speed, between) => {
        const slots = set.blocks.flatMap(({ items }) =>
          items.flatMap((item) => swumOut(item, speed, between)),
        );
        const totals = setTotals(set, { pace: speed, restBetweenRounds: hundredths(between) });
        const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
        const swum = slots.map(({ swim }) => swim);
        const rested = slots.map(({ gap }) => gap);

        expect(totals.distance).toBe(sum(slots.map(({ distance }) => distance)));
        expect(totals.swimTime).toBe(sum(swum));
        const rest = sum(rested.slice(0, -1));
        // What the sum cannot tell, the send-off of a round may.
        if (!Number.isNaN(rest)) expect(totals).toMatchObject({ rest, duration: sum(swum) + rest });
        if (!Number.isNaN(sum(rested))) expect(totals.booked).toBe(sum(swum) + sum(rested));
        totals.clock.forEach(({ start }, i) => {
          const before = sum(swum.slice(0, i)) + sum(rested.slice(0, i));
          if (!Number.isNaN(before)) expect(start).toBe(before);
        });
      }),
    );
  });

  test('what is known without a pace stays as it is with one', () => {
    fc.assert(
      fc.property(plannedSet, lap, (set, speed) => {
        const without = setTotals(set);
        const { clock } = setTotals(set, { pace: speed });
        without.clock.forEach(({ start, swim, rest }, i) => {
          if (start !== null) expect(clock[i]!.start).toBe(start);
          if (swim !== null) expect(clock[i]!.swim).toBe(swim);
          if (rest !== null) expect(clock[i]!.rest).toBe(rest);
        });
      }),
    );
  });

  test('swim and rest make the duration, and nothing unknown goes without a caution', () => {
    fc.assert(
      fc.property(plannedSet, fc.option(lap, { nil: undefined }), (set, speed) => {
        const { swimTime, rest, duration, cautions } = setTotals(
          set,
          speed === undefined ? {} : { pace: speed },
        );
        if (swimTime !== null && rest !== null) expect(duration).toBe(swimTime + rest);
        if (duration === null) expect(cautions).not.toEqual([]);
      }),
    );
  });

  test.each<[object, string]>([
    [{ pace: 0 }, 'not-a-time'],
    [{ paces: { kick: 70.5 } }, 'not-a-time'],
    [{ paces: 7000 }, 'wrong-shape'],
    [{ lane: 0 }, 'out-of-range'],
    [{ restBetweenRounds: -1 }, 'out-of-range'],
    [{ pool: 'SCM' }, 'wrong-shape'],
    [{ pace: Number.MAX_SAFE_INTEGER }, 'too-large'],
  ])('%j is refused with %s', (options, code) => {
    expect(codeOf(() => of('4 x 400', options))).toBe(code);
  });

  test('whatever it is given, totals come out or a PacingError', () => {
    const given = fc.dictionary(
      fc.constantFrom('pace', 'paces', 'lane', 'restBetweenRounds', 'pool'),
      fc.oneof(anything, fc.integer()),
    );
    fc.assert(
      fc.property(fc.oneof(plannedSet, anything), given, (set, options) => {
        expect(isSound(() => setTotals(set as PlannedSet, options as object))).toBe(true);
      }),
    );
  });
});

/** One swim after the other, the first lane's send-offs, all at one pace; NaN where the rest is not known. */
function swumOut(
  item: SetItem,
  speed: number,
  between: number,
): { distance: number; swim: number; gap: number }[] {
  const sendOff = item.sendOffs?.[0];
  if (item.type === 'swims') {
    const alone = item.reps * item.distances.length === 1;
    const ladder = item.distances.map((distance) => {
      const swim = item.target ?? Math.floor((2 * speed * distance + 100) / 200);
      const gap = sendOff === undefined ? (item.rest ?? (alone ? 0 : Number.NaN)) : sendOff - swim;
      return { distance, swim, gap };
    });
    return Array.from({ length: item.reps }, () => ladder.map((slot) => ({ ...slot }))).flat();
  }
  return Array.from({ length: item.rounds }, (_, round) => {
    const slots = item.items.flatMap((part) => swumOut(part, speed, between));
    const last = slots.at(-1)!;
    const busy = slots.reduce((sum, { swim, gap }) => sum + swim + gap, 0) - last.gap;
    const extra = item.rest ?? (round + 1 < item.rounds ? between : 0);
    last.gap = sendOff === undefined ? last.gap + extra : sendOff - busy;
    return slots;
  }).flat();
}
