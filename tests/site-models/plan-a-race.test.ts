import { formatTime, hundredths } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scaleOf, stepsOf } from '~/calculators/plan-a-race/chart-scale';
import { nudgeOf, withDifference } from '~/calculators/plan-a-race/drawing';
import { finalSwum, nextFinal } from '~/calculators/plan-a-race/example';
import { addressOf, type PlanFields, shape } from '~/calculators/plan-a-race/fields';
import { viewOf } from '~/calculators/plan-a-race/model';
import { readQuery } from '~/ui/address';

const view = (change: Partial<PlanFields> = {}) =>
  viewOf({ ...nextFinal, ...change } as PlanFields);
const laps = (change: Partial<PlanFields>) =>
  view(change).result?.plan.laps.map((lap) => formatTime(lap));

describe('planning a race', () => {
  test('says what the watch must show at halfway', () => {
    const { result } = view();
    expect(result?.card.halfway?.text).toBe('2:14.50');
    expect(result?.sentence).toBe(
      '400 m in 4:26.00: the watch must show 2:14.50 at halfway, and the second half is 3.00 faster.',
    );
    expect(result?.card.checkpoints.map(({ text }) => text.time)).toEqual([
      '1:07.25',
      '2:14.50',
      '3:20.25',
      '4:26.00',
    ]);
  });

  test('takes each shape', () => {
    const short = { distance: '200', goal: '2:20' };
    expect(laps({ ...short, shape: 'even' })).toEqual(['35.00', '35.00', '35.00', '35.00']);
    const slower = laps({ ...short, shape: 'halves', way: 'slower', gap: '2' });
    expect(slower).toEqual(['34.50', '34.50', '35.50', '35.50']);
    const own = laps({ ...short, shape: 'own', own: '30 36 37 37' });
    expect(own).toEqual(['30.00', '36.00', '37.00', '37.00']);
    const [women, men] = (['W', 'M'] as const).map((sex) => view({ ...short, shape: sex }).result);
    expect(women?.plan.laps).not.toEqual(men?.plan.laps);
    expect(women?.cautions.join()).toMatch(/Olympic finals of women/);
    expect([women?.drawn, view({ shape: 'even' }).result?.drawn]).toEqual([false, true]);
  });

  test('an earlier swim over another distance, in running times, is stretched and says so', () => {
    const { result } = view({ shape: 'own', own: '30.0 1:02 1:35 2:08', ownKind: 'running' });
    expect(result?.plan.goal).toBe(26600);
    expect(result?.cautions.join()).toMatch(/swum over 200 and is stretched to 400/);
  });

  test('dive and finish take off the first and the last lap, and nowhere else', () => {
    const edged = laps({ distance: '200', goal: '2:20', shape: 'even', credit: '2', lift: '0.4' });
    expect(edged).toEqual(['33.60', '35.60', '35.60', '35.20']);
    const championship = view({ shape: 'W', credit: 'soon', lift: '2' });
    expect(championship.errors.credit).toBeNull();
    expect(championship.result).not.toBeNull();
  });

  test('the card has rows of a length or more, and never more than one sheet holds', () => {
    expect(view({ every: '2' }).result?.card.rows.map(({ distance }) => distance)).toEqual([
      100, 200, 300, 400,
    ]);
    const mile = view({ pool: '25yd', distance: '1650', goal: '18:20' });
    expect(mile.result?.card.rows).toHaveLength(66);
    const long = view({ pool: '25m', distance: '10000', goal: '2:10:00' });
    expect(long.strides[0]).toBe(8);
    expect(long.stride).toBe(8);
    expect(long.result?.card.rows).toHaveLength(50);
  });

  test('a race of one length has a goal and no halfway', () => {
    const { result } = view({ distance: '50', goal: '28.5', shape: 'even' });
    expect(result?.card.halfway).toBeNull();
    expect(result?.drawn).toBe(false);
    expect(result?.sentence).toMatch(/no halfway wall/);
  });

  test('halfway between two walls is said to be', () => {
    const { result } = view({ pool: '25m', distance: '75', goal: '50', shape: 'even' });
    expect(result?.card.halfway?.interpolated).toBe(true);
    expect(result?.cautions.join()).toMatch(/between two walls/);
  });

  test('the swim that followed is judged against the plan', () => {
    const { result } = viewOf(finalSwum);
    expect(result?.judged?.difference).toBe(-20);
    expect(result?.judged?.firstHalf).toBe(-100);
    expect(result?.judged?.secondHalf).toBe(80);
    expect(result?.judged?.rows).toHaveLength(8);
    const coarse = viewOf({ ...finalSwum, every: '8' });
    expect(coarse.result?.judged?.rows).toHaveLength(8);
  });

  test('what is wrong with the swim leaves the plan standing', () => {
    const short = view({ swum: '31 34' });
    expect(short.swum.errors.join()).toMatch(/give the whole swim/);
    expect(short.result?.judged).toBeNull();
    const unread = view({ swum: '31 soon' });
    expect(unread.swum.errors.join()).toMatch(/^Lap 2/);
    expect(unread.result).not.toBeNull();
  });

  test('each field says what it needs', () => {
    expect(view({ distance: '410' }).errors.distance).toMatch(/410/);
    expect(view({ goal: '' }).errors.goal).toBe('Enter the goal time.');
    expect(view({ gap: '' }).errors.gap).toBe('Enter the difference of the halves.');
    expect(view({ shape: 'own' }).own.errors).toEqual(['Enter the times of the earlier swim.']);
    expect(view({ pool: 'other', length: '' }).errors.length).toMatch(/^Enter the length/);
    expect(view({ credit: 'soon' }).errors.credit).not.toBeNull();
    const one = view({ distance: '50', goal: '28.5' });
    expect(one.errors.gap).toMatch(/one length/);
    const hasty = view({ distance: '200', goal: '20', shape: 'even', credit: '9.9' });
    expect(hasty.errors.credit).toMatch(/no time for length 1/);
  });
});

describe('drawing the shape', () => {
  test('what is drawn stands in the fields, and comes out of the plan', () => {
    for (const difference of [-710, -10, 10, 300]) {
      const fields = withDifference(nextFinal, difference);
      expect(viewOf(fields).result?.plan.difference).toBe(difference);
    }
    expect(withDifference(nextFinal, 0).shape).toBe('even');
    expect(withDifference({ ...nextFinal, shape: 'even' }, -300).gap).toBe('3.00');
  });

  test('a press moves a thousandth of the goal, to a tenth', () => {
    expect(nudgeOf(hundredths(26600))).toBe(30);
    expect(nudgeOf(hundredths(100500))).toBe(100);
    expect(nudgeOf(hundredths(2800))).toBe(10);
  });

  test('laps are drawn against the mean pace of the goal, with room on both sides', () => {
    const { plan } = view({ goal: '4:21' }).result ?? {};
    if (plan === undefined) throw new Error('The example has no plan.');
    const steps = stepsOf(plan.marks, plan);
    expect(steps.map(({ off }) => off * plan.goal)).toEqual([
      ...Array(4).fill(expect.closeTo(300)),
      ...Array(4).fill(expect.closeTo(-300)),
    ]);
    const scale = scaleOf(steps);
    expect(scale.limit).toBeGreaterThan(300 / 26100);
    expect(scale.ticks.at(0)).toBeCloseTo(-scale.limit);
    expect(scale.ticks.at(-1)).toBeCloseTo(scale.limit);
  });
});

describe('the fields of a plan', () => {
  test('come back out of the address as they went in', () => {
    const fields = { ...finalSwum, goal: '4.26,0', shape: 'own', own: '31,4\n105→1:05.00' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, nextFinal, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in them, there is a view and no NaN in it', () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('', '0', '−1', '1e9', '105', '400', '1650', '4:26', '3', '30 31 32 33'),
    );
    const fields = fc.record({
      pool: fc.constantFrom('25m', '25yd', '50m', 'other'),
      length: text,
      unit: fc.constantFrom('m', 'yd'),
      distance: text,
      goal: text,
      shape: fc.constantFrom('even', 'halves', 'W', 'M', 'own'),
      way: fc.constantFrom('faster', 'slower'),
      gap: text,
      credit: text,
      lift: text,
      every: fc.constantFrom('1', '2', '8', '128'),
      own: text,
      ownEvery: fc.constantFrom('1', '4'),
      ownKind: fc.constantFrom('laps', 'running'),
      swum: text,
      swumEvery: fc.constantFrom('1', '4'),
      swumKind: fc.constantFrom('laps', 'running'),
    });
    fc.assert(
      fc.property(fields, (all) => {
        const { result, errors, own } = viewOf(all as PlanFields);
        const wrong = Object.values(errors).some((error) => error !== null);
        expect(result === null).toBe(wrong || (all.shape === 'own' && own.errors.length > 0));
        expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
