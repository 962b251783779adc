import { OPEN_WATER_EFFECTS } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSentence, sentenceOf, wayOut } from '~/calculators/open-water/answer';
import { withCurrent } from '~/calculators/open-water/current';
import { ebb } from '~/calculators/open-water/example';
import { shape, type WaterFields } from '~/calculators/open-water/fields';
import { addressOf, viewOf } from '~/calculators/open-water/model';
import { aims, namedRows, planTable } from '~/calculators/open-water/rows';
import { readQuery } from '~/ui/address';

const view = (changed: Partial<WaterFields>) => viewOf({ ...ebb, ...changed } as WaterFields);
const plan = (changed: Partial<WaterFields>) => {
  const { planned, errors } = view(changed);
  expect(errors).toEqual({});
  return planned!;
};
const watch = (changed: Partial<WaterFields>) =>
  planTable(plan(changed)).rows.map(({ cells }) => cells[0]);

describe('planning an open-water leg', () => {
  // Worked: 750 / (1.25 − 0.25) = 750 s, 750 / (1.25 + 0.25) = 500 s; 1500 / 1.25 = 1200 s.
  test('shows the watch at each buoy, and what the current costs', () => {
    const found = plan({});
    expect(sentenceOf(found)).toBe(
      '12:30 at halfway, 750 m, and 20:50 at the finish; 20:00 in still water.',
    );
    expect(watch({})).toEqual(['12:30', '20:50']);
    expect(watch({ start: 'speed', speed: '1,25 m/s' })).toEqual(['12:30', '20:50']);
    expect(watch({ start: 'goal', goal: '20:50' })).toEqual(['12:30', '20:50']);
  });

  test('takes with and against as a choice, never a sign', () => {
    expect(watch({ 'current-1': 'with', 'current-2': 'against' })).toEqual(['8:20', '20:50']);
    expect(watch({ 'current-1': 'still', 'current-2': 'still' })).toEqual(['10:00', '20:00']);
    expect(view({ 'size-1': '-0.25' }).errors['size-1']).toMatch(/must be a number/);
  });

  test('costs time out and back whichever way comes first, and however strong', () => {
    const sizes = fc.integer({ min: 1, max: 110 }).map((n) => (n / 100).toFixed(2));
    fc.assert(
      fc.property(sizes, fc.boolean(), (size, outWith) => {
        const [there, home] = outWith ? ['with', 'against'] : ['against', 'with'];
        const ways = { 'current-1': there, 'current-2': home, 'size-1': size, 'size-2': size };
        expect(plan(ways as Partial<WaterFields>).plan.currentCost).toBeGreaterThan(0);
      }),
    );
  });

  test('shifts a negative split to the second half, the finish kept', () => {
    expect(watch({ split: 'faster', by: '20' })).toEqual(['12:40', '20:50']);
    expect(view({ split: 'faster', by: '' }).errors).toEqual({ by: 'Enter the difference.' });
    const { errors } = view({ split: 'faster', by: '10:25' });
    expect(Object.keys(errors)).toEqual(['by']);
    expect(errors['by']).toContain('by its difference from the first');
  });

  test('shows the speed through the water where the halves differ in it', () => {
    const speeds = 'Through water (m/s)';
    expect(planTable(plan({ split: 'faster', by: '20' })).columns).toContain(speeds);
    expect(planTable(plan({})).columns).not.toContain(speeds);
  });

  test('cuts the leg across halfway in two, and names laps', () => {
    const three = { legs: '3', 'distance-3': '500', 'current-3': 'still' };
    expect(namedRows(plan(three)).map(({ name }) => name)).toEqual([
      'Leg 1',
      'Leg 2, to halfway',
      'Leg 2, from halfway',
      'Leg 3',
    ]);
    expect(namedRows(plan({ laps: '2' })).map(({ name }) => name)).toEqual([
      'Lap 1, leg 1',
      'Lap 1, leg 2',
      'Lap 2, leg 1',
      'Lap 2, leg 2',
    ]);
  });

  test('leg times add up to the watch, to the second', () => {
    const rows = namedRows(plan({ pace: '1:23.37', laps: '5' }));
    const sum = rows.reduce((total, { shown }) => total + shown, 0);
    expect(sum).toBe(Math.round(rows.at(-1)!.elapsed / 100) * 100);
  });

  // Worked: a 5-12-13 triangle has its sharp angle at 22.6°; 0.5 / 1.3 is 38 m a hundred.
  test('says where to aim across a current', () => {
    const across = { start: 'speed', speed: '1.3', 'current-1': 'still', 'cross-1': '0.5' };
    expect(aims(plan(across))).toEqual([
      'On leg 1 aim 23° upstream of the buoy; straight at it, the water carries you 38 m aside for every 100 m swum.',
    ]);
    expect(planTable(plan(across)).columns).toContain('Aim upstream (°)');
    expect(planTable(plan({})).columns).not.toContain('Aim upstream (°)');
  });

  test('shows a published effect as a range with its source, and only when asked', () => {
    expect(plan({}).effect).toBeNull();
    const { effect, plan: alone } = plan({ effect: 'wetsuit' });
    expect(effect!.fast).toBeLessThan(effect!.slow);
    expect(effect!.slow).toBeLessThan(alone.time);
    expect(effect!.covers).toContain(OPEN_WATER_EFFECTS.wetsuit.source);
  });

  test('warns of open water in every plan', () => {
    expect(plan({}).plan.cautions.map(({ code }) => code)).toContain('open-water-safety');
  });

  test('refuses water as fast as the swimmer, beside the field that tells the speed', () => {
    const fast = { 'size-1': '1.25' };
    expect(view(fast).planned).toBeNull();
    expect(view(fast).errors['pace']).toMatch(/^On leg 1 the water is too strong/);
  });

  test('says of each field what would do', () => {
    expect(view({ legs: '3' }).errors).toEqual({ 'distance-3': 'Enter the distance of leg 3.' });
    expect(view({ laps: '0' }).errors['laps']).toMatch(/1 or more/);
    expect(view({ pace: '' }).errors).toEqual({ pace: 'Enter the pace.' });
  });

  // Worked: 750 / 660 and 750 / 540, their mean and half their difference.
  test('reads a current out of two times, and plans with it', () => {
    const { read } = view({ job: 'read' });
    expect(read!.reading.current).toBeCloseTo(-0.1262626, 6);
    expect(wayOut(read!)).toBe('against the way out');
    expect(readSentence(read!)).toMatch(/^The water ran at 0\.13 m\/s, against the way out/);
    const next = viewOf(withCurrent({ ...ebb, job: 'read' }, read!)).planned!;
    expect(next.plan.time / 100).toBeCloseTo(1200, -1);
    expect(next.plan.halfway.time / 100).toBeCloseTo(660, 0);

    const level = view({ job: 'read', back: '11:00' }).read!;
    expect(wayOut(level)).toBe('no current shows');
    expect(withCurrent(ebb, level)['current-1']).toBe('still');
    expect(view({ job: 'read', back: 'soon' }).errors['back']).toMatch(/no time/);
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...ebb, 'size-1': '0,25', legs: '8', job: 'read' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, ebb, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in the fields, it shows an answer or says why not', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom('750', '0.25', '1:20', '20:00', '0', '1.25 m/s', '3', '105', '0,5'),
    );
    const fields = fc.record(
      Object.fromEntries(
        Object.entries(shape).map(([name, choices]) => [
          name,
          choices === 'any' ? text : fc.constantFrom(...choices),
        ]),
      ),
    ) as fc.Arbitrary<WaterFields>;
    fc.assert(
      fc.property(fields, (given) => {
        const { planned, read, errors } = viewOf(given);
        expect(planned !== null || read !== null).toBe(Object.keys(errors).length === 0);
        expect(JSON.stringify([planned, read, planned && planTable(planned)])).not.toMatch(
          /NaN|Infinity|undefined/,
        );
        for (const name of Object.keys(errors)) expect(Object.keys(shape)).toContain(name);
      }),
    );
  });
});
