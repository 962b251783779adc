import { formatTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { junAutumn } from '~/calculators/compare/example';
import { addressOf, type CompareFields, shape } from '~/calculators/compare/fields';
import { viewOf } from '~/calculators/compare/model';
import { meetingOf, whyOf } from '~/calculators/compare/Pairs';
import { estimateRows, goalRows } from '~/calculators/compare/Result';
import { readQuery } from '~/ui/address';

const view = (change: Partial<CompareFields> = {}) =>
  viewOf({ ...junAutumn, ...change } as CompareFields);
const result = (change: Partial<CompareFields> = {}) => {
  const found = view(change).result;
  if (found === null) throw new Error(JSON.stringify(view(change).errors));
  return found;
};
const bare = { reps: '', exponent: 'none', goal: '' };
const answered = (change: Partial<CompareFields> = {}) =>
  result(change).answered.map(({ name, estimate }) => [name, formatTime(estimate.time)]);

describe('comparing estimates', () => {
  test('the example by all four, fastest first, each under its own name', () => {
    const seen = result();
    expect(seen.answered.map(({ name }) => name).sort()).toEqual([
      'Critical speed',
      'Exponent 1.043 from the 400',
      'Power law, fitted',
      'Twice the second halves',
    ]);
    const times = seen.answered.map(({ estimate }) => estimate.time);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(seen.comparison.estimates.map(({ time }) => time)).toEqual(times);
    expect(seen.comparison.pairs).toHaveLength(6);
    expect(seen.sentence).toMatch(
      /^4 estimates for 1500 m, \d+\.\d\d apart\. Critical speed: 16:31\.75/,
    );
  });

  test('no figure stands between the estimates: nothing is averaged', () => {
    const all = answered({ reps: '' });
    const text = JSON.stringify([
      estimateRows(result({ reps: '' })),
      result({ reps: '' }).sentence,
    ]);
    const mean = formatTime(
      Math.round(
        result({ reps: '' }).answered.reduce((sum, { estimate }) => sum + estimate.time, 0) /
          all.length,
      ) as never,
    );
    expect(text).not.toContain(mean);
    expect(result().cautions[0]).toMatch(/none is averaged/);
  });

  test('the goal lies somewhere against each', () => {
    expect(goalRows(result()).rows).toHaveLength(4);
    expect(
      result({ goal: '15:30' }).comparison.goal?.every(({ place }) => place === 'faster'),
    ).toBe(true);
    expect(result({ goal: '15:30' }).sentence).toMatch(/faster than all the range of 4 of 4/);
    expect(result({ goal: '' }).comparison.goal).toBeNull();
  });

  test('races alone, a set alone, one race with an exponent: each is enough', () => {
    expect(answered(bare).map(([name]) => name)).toEqual(['Critical speed', 'Power law, fitted']);
    expect(answered({ ...bare, swims: '', reps: '31.5 33.5\n31.5 33.5' })).toEqual([
      ['Twice the second halves', '16:45.00'],
    ]);
    expect(answered({ ...bare, swims: '400 4:00', exponent: '0' })).toEqual([
      ['Exponent 1.06 from the 400', '16:14.28'],
    ]);
  });

  test('a published exponent starts where the track record knows the way, else nearest', () => {
    const name = (swims: string) => result({ ...bare, swims, exponent: '7' }).methods.at(-1)?.name;
    expect(name('400 4:11.6\n1000 10:56.4')).toBe('Exponent 1.043 from the 400');
    expect(name('500 5:20\n1000 10:56.4')).toBe('Exponent 1.043 from the 1000');
    expect(name('1500 16:40\n500 5:20\n1000 10:56.4')).toBe('Exponent 1.043 from the 1000');
  });

  test('a method that cannot answer says what it would take', () => {
    const lacks = result({ ...bare, swims: '', reps: '31.5 33.5' }).methods.map((one) => one.lacks);
    expect(lacks).toEqual([
      null,
      'Needs two races or trials over different distances.',
      'Needs two races or trials over different distances.',
    ]);
  });

  test('ranges meet, lie apart, or are not known, in words', () => {
    const words = result().comparison.pairs.map(meetingOf);
    expect(words.every((text) => /take in|do not meet|no range/.test(text))).toBe(true);
    expect(words.join()).toMatch(/both ranges take in 16:/);
    expect(meetingOf({ ...result().comparison.pairs[0]!, ranges: 'apart', overlap: null })).toBe(
      'their ranges do not meet',
    );
  });

  test('why two differ is told under the names used here', () => {
    const { comparison, answered: all } = result();
    const why = comparison.pairs.map((pair) => whyOf(pair, all)).join('\n');
    expect(why).toMatch(/Twice the second halves takes for granted/);
    expect(why).not.toMatch(/back-half|critical-speed takes/);
  });

  test('where nothing can answer, it is said why or what to type', () => {
    expect(view({ ...bare, swims: '' }).errors.swims).toEqual([
      'Enter two races or trials, or a reading set.',
    ]);
    const { errors } = view({ ...bare, swims: '200 2:00\n400 3:50' });
    expect(errors.swims.join()).toMatch(/400 m was swum no slower than the 200 m/);
    expect(view({ ...bare, swims: '200 2:00' }).errors.swims.join()).toMatch(
      /^Needs a reading set/,
    );
  });

  test('takes yards', () => {
    const yards = result({
      ...bare,
      pool: '25yd',
      swims: '200 1:50\n500 4:55\n1000 10:10',
      race: '1650',
      exponent: '0',
    });
    expect(yards.race).toBe('1650 yd');
    expect(yards.methods.at(-1)?.name).toMatch(/from the 1000$/);
  });

  test('each field says what it needs, and an empty set needs nothing', () => {
    expect(view({ race: '' }).errors.race).toBe('Enter the race distance.');
    expect(view({ goal: 'soon' }).errors.goal).not.toBeNull();
    expect(view({ distance: 'x' }).errors.distance).toMatch(/must be a number/);
    expect(view({ reps: '31.5 33.5\n31 soon' }).errors.reps.join()).toMatch(/Rep 2/);
    expect(view({ rest: '' }).errors.rest).toMatch(/^Enter the send-off/);
    expect(view({ reps: '', rest: '', distance: '' }).result).not.toBeNull();
  });
});

test('comes back out of its address as it went in', () => {
  const fields = { ...junAutumn, swims: '400;4:11,6', exponent: 'none' };
  const query = addressOf(fields).split('?').slice(1).join('?');
  expect(readQuery(query, junAutumn, shape)).toEqual({ fields, problems: [] });
});

test('whatever stands in the fields, there is a view and no NaN in it', () => {
  const text = fc.oneof(
    fc.string(),
    fc.constantFrom('', '0', '−1', '1e9', '105', '1500', '100', '16:40', '31.5 33.5\n31.4 33.6'),
  );
  const swim = fc
    .tuple(fc.integer({ min: 10, max: 99_999 }), fc.integer({ min: 1, max: 999_999 }))
    .map(([distance, time]) => `${distance} ${time / 100}`);
  const fields = fc.record({
    pool: fc.constantFrom('25m', '25yd', 'other'),
    length: text,
    unit: fc.constantFrom('m', 'yd'),
    race: text,
    goal: text,
    swims: fc.oneof(
      text,
      fc.array(swim, { maxLength: 5 }).map((lines) => lines.join('\n')),
    ),
    exponent: fc.constantFrom('none', '0', '7'),
    reps: text,
    distance: text,
    kind: fc.constantFrom('halves', 'running'),
    known: fc.constantFrom('sendOff', 'rest', 'total', 'nothing'),
    rest: text,
  });
  fc.assert(
    fc.property(fields, (all) => {
      const { result: found, errors } = viewOf(all as CompareFields);
      const wrong = Object.values(errors).some((error) => error !== null && error.length > 0);
      expect(found === null).toBe(wrong);
      expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|undefined/);
    }),
  );
});
