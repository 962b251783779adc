import { hundredths, parseSet, setTotals } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timelineOf } from '../../../packages/core/src/sets/timeline.js';
import { lap, plannedSet } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';

const pace = hundredths(7000);

describe('timelineOf', () => {
  test('gives every swim with its time and rest', () => {
    expect(timelineOf(parseSet('2 x (100 on 1:30 + 50 r 20)'), { pace })).toEqual([
      { distance: 100, swim: 7000, rest: 2000 },
      { distance: 50, swim: 3500, rest: 2000 },
      { distance: 100, swim: 7000, rest: 2000 },
      { distance: 50, swim: 3500, rest: 2000 },
    ]);
  });

  test('what follows the last swim is no part of the set', () => {
    expect(timelineOf(parseSet('400'), { pace })).toEqual([
      { distance: 400, swim: 28_000, rest: 0 },
    ]);
  });

  test('refuses a set that leaves a time open, and says which', () => {
    const noPace = refusal(() => timelineOf(parseSet('100 hold 1:10 r 10 + 100'), {}));
    expect(noPace).toMatchObject({
      code: 'set-incomplete',
      message: expect.stringMatching(/^Swim 2 of the set/),
    });
    const noRest = refusal(() => timelineOf(parseSet('3 x 100'), { pace }));
    expect(noRest).toMatchObject({
      code: 'set-incomplete',
      message: expect.stringMatching(/^The rest after swim 1/),
    });
  });

  test('adds up to the totals, or refuses where they are not known', () => {
    fc.assert(
      fc.property(plannedSet, lap, (set, speed) => {
        const { swimTime, rest } = setTotals(set, { pace: speed });
        if (swimTime === null || rest === null) {
          expect(codeOf(() => timelineOf(set, { pace: speed }))).toBe('set-incomplete');
          return;
        }
        const swims = timelineOf(set, { pace: speed });
        const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
        expect(sum(swims.map(({ swim }) => swim))).toBe(swimTime);
        expect(sum(swims.slice(0, -1).map((each) => each.rest))).toBe(rest);
      }),
    );
  });
});
