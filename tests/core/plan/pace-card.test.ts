import { hundredths, LCM, paceCard, planRace, SCY } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly } from '../../generators.js';
import { codeOf } from '../../refusal.js';
import { isSound } from '../../sound.js';

const mile = planRace({
  pool: SCY,
  distance: 1650,
  goal: hundredths(110_001),
  shape: { secondHalf: hundredths(-201) },
  every: 100,
});

describe('paceCard', () => {
  const card = paceCard(mile);

  test('has a row for each mark, as numbers and as text', () => {
    expect(card.rows).toHaveLength(17);
    expect(card.rows.map(({ distance, time }) => ({ distance, time }))).toEqual(mile.marks);
    expect(card.rows.map(({ lap }) => lap)).toEqual(mile.laps);
    expect(card.rows[0]).toEqual({
      distance: 100,
      lengths: 4,
      lap: 6679,
      time: 6679,
      text: { distance: '100 yd', lap: '1:06.79', time: '1:06.79' },
    });
    expect(card.rows.at(-1)).toMatchObject({ lengths: 66, text: { time: '18:20.01' } });
  });

  test('counts the laps of checkpoints from one to the next', () => {
    expect(card.checkpoints.map(({ distance }) => distance)).toEqual([400, 825, 1225, 1650]);
    const laps = card.checkpoints.map(({ lap }) => lap);
    expect(laps.reduce((total, lap) => total + lap, 0)).toBe(110_001);
    expect(laps[0]! + laps[1]!).toBe(card.halfway?.time);
  });

  test('says what the watch must show at halfway, though no row stands there', () => {
    expect(card.halfway).toEqual({
      distance: 825,
      time: 55_101,
      interpolated: false,
      text: '9:11.01',
    });
  });

  test('is headed by distance and goal', () => {
    expect(card.title).toBe('1650 yd in 18:20.01');
  });

  test('one length has no halfway', () => {
    const sprint = planRace({ pool: LCM, distance: 50, goal: hundredths(2500), shape: 'even' });
    expect(paceCard(sprint).halfway).toBeNull();
  });

  test('refuses a mark at no wall', () => {
    const marks = [{ distance: 130, time: hundredths(9000) }];
    expect(codeOf(() => paceCard({ ...mile, marks }))).toBe('not-whole-lengths');
  });

  test('answers anything with a card or a PacingError', () => {
    const plan = fc.record({
      pool: nearly(fc.constant(SCY)),
      marks: nearly(fc.constant(mile.marks)),
      halves: nearly(fc.constant(mile.halves)),
      checkpoints: nearly(fc.constant(mile.checkpoints)),
    });
    fc.assert(
      fc.property(fc.oneof(anything, plan), (given) => isSound(() => paceCard(given as never))),
    );
  });
});
