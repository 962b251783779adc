import { hundredths, practiceDuration, setDuration } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const timing = fc.record({
  sendOff: lap,
  reps: fc.integer({ min: 1, max: 100 }),
  stagger: lap,
  swimmers: fc.integer({ min: 1, max: 10 }),
  swim: lap,
});

describe('setDuration', () => {
  test('is what counting out every departure gives', () => {
    fc.assert(
      fc.property(timing, (set) => {
        let last = 0;
        for (let rep = 0; rep < set.reps; rep++) {
          for (let swimmer = 0; swimmer < set.swimmers; swimmer++) {
            last = Math.max(last, rep * set.sendOff + swimmer * set.stagger);
          }
        }
        expect(setDuration(set)).toEqual({
          lastDeparture: last,
          finished: last + set.swim,
          booked: last + set.sendOff,
        });
      }),
    );
  });

  test('knows no finish where no swim was given', () => {
    const set = setDuration({ sendOff: hundredths(9000), reps: 10 });
    expect(set).toEqual({ lastDeparture: 81_000, finished: null, booked: 90_000 });
  });

  test('refuses what no longer fits', () => {
    const sendOff = hundredths(Number.MAX_SAFE_INTEGER);
    expect(codeOf(() => setDuration({ sendOff, reps: 3 }))).toBe('too-large');
  });

  test('answers anything with times or a PacingError', () => {
    const set = fc.record({ sendOff: nearly(lap), reps: nearly(fc.nat(20)), swim: nearly(lap) });
    fc.assert(fc.property(nearly(set), (given) => isSound(() => setDuration(given))));
  });
});

describe('practiceDuration', () => {
  const set = { sendOff: hundredths(6000), reps: 10 };

  test('adds the sets and the pauses between them', () => {
    expect(practiceDuration([set])).toBe(60_000);
    expect(practiceDuration([set, set, set], hundredths(3000))).toBe(186_000);
  });

  test('is nothing for no set', () => {
    expect(practiceDuration([], hundredths(3000))).toBe(0);
  });

  test('refuses a pause below zero', () => {
    expect(codeOf(() => practiceDuration([set], hundredths(-1)))).toBe('out-of-range');
  });

  test('answers anything with a time or a PacingError', () => {
    fc.assert(
      fc.property(nearly(fc.array(nearly(timing))), nearly(lap), (sets, pause) =>
        isSound(() => practiceDuration(sets, pause)),
      ),
    );
  });
});
