import { hundredths, readSet, SCM, type SetReading, splitsFromLaps, targetsFor } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly, swumSet } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const read = (...laps: number[]): SetReading =>
  readSet({
    pool: SCM,
    repDistance: 50 * laps.length,
    reps: [splitsFromLaps(50, laps.map(hundredths))],
  });
const today = read(3150, 3350);
const codes = (targets: ReturnType<typeof targetsFor>) => targets.cautions.map(({ code }) => code);

describe('targetsFor', () => {
  test('an even rep at the honest pace, and one step better', () => {
    expect(targetsFor(today)).toMatchObject({
      honest: { halfway: 3350, wall: 6700, difference: 0 },
      better: { halfway: 3335, wall: 6670, difference: 0 },
      goOut: 200,
      comeHome: 0,
    });
  });

  test('a negative rep goes out slower and comes home faster', () => {
    expect(targetsFor(today, { secondHalf: hundredths(-60) })).toMatchObject({
      honest: { halfway: 3380, wall: 6700, difference: -60 },
      goOut: 230,
      comeHome: -30,
    });
  });

  test('the step is the coach’s to choose', () => {
    expect(targetsFor(today, { step: hundredths(100) }).better.wall).toBe(6600);
  });

  test('a short rep still has a step of a tenth', () => {
    expect(targetsFor(read(700, 800)).better.wall).toBe(1590);
  });

  test('the targets of any set add up: wall is twice the second half, halves differ as asked', () => {
    const secondHalf = fc.integer({ min: -50, max: 50 }).map(hundredths);
    fc.assert(
      fc.property(swumSet, secondHalf, (set, asked) => {
        const reading = readSet(set);
        fc.pre(reading.halves !== null && reading.halves.second > 60);
        const { first, second } = reading.halves!;
        const targets = targetsFor(reading, { secondHalf: asked });
        expect(targets.honest.wall).toBe(2 * second);
        expect(targets.better.wall).toBeLessThan(targets.honest.wall);
        const odd = Math.abs(asked) % 2;
        expect(targets.honest.difference).toBe(asked - odd);
        expect(2 * targets.honest.halfway + targets.honest.difference).toBe(2 * second);
        expect(targets.goOut).toBe(targets.honest.halfway - first);
        expect(targets.comeHome).toBe(second - targets.honest.halfway);
        expect(codes(targets).includes('odd-hundredth')).toBe(odd === 1);
      }),
    );
  });

  test('says that the rule is untested, and where a hundredth is left', () => {
    expect(codes(targetsFor(today))).toEqual(['rule-untested']);
    expect(codes(targetsFor(today, { secondHalf: hundredths(-1) }))).toContain('odd-hundredth');
    expect(codes(targetsFor(today, { step: hundredths(1) }))).toContain('odd-hundredth');
  });

  test('refuses a reading without halves', () => {
    expect(codeOf(() => targetsFor(read(6500)))).toBe('halfway-not-bracketed');
  });

  test.each([
    ['a half’s own time for a difference', { secondHalf: hundredths(3350) }, 'out-of-range'],
    ['a difference of more than a quarter', { secondHalf: hundredths(-1676) }, 'out-of-range'],
    ['a step as long as the rep', { step: hundredths(6700) }, 'out-of-range'],
    ['a step back', { step: hundredths(-10) }, 'not-a-time'],
    ['a difference that is none', { secondHalf: 0.5 }, 'not-a-time'],
  ])('refuses %s', (_, options, code) => {
    expect(codeOf(() => targetsFor(today, options as never))).toBe(code);
  });

  test('answers anything with targets or a PacingError', () => {
    const halves = nearly(fc.record({ first: nearly(anything), second: nearly(fc.maxSafeNat()) }));
    const options = fc.record({ secondHalf: nearly(fc.maxSafeInteger()), step: anything });
    fc.assert(
      fc.property(nearly(fc.record({ halves })), nearly(options), (reading, how) =>
        isSound(() => targetsFor(reading as never, how as never)),
      ),
    );
  });
});
