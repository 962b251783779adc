import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { thursday } from '~/calculators/write-a-set/example';
import {
  addressOf,
  barsOf,
  rowsOf,
  shape,
  viewOf,
  type WriteFields,
} from '~/calculators/write-a-set/model';
import { slipAt } from '~/calculators/write-a-set/slip';
import { readQuery } from '~/ui/address';

const view = (changed: Partial<WriteFields>) => viewOf({ ...thursday, ...changed } as WriteFields);
const result = (changed: Partial<WriteFields>) => {
  const { result: found, errors } = view(changed);
  expect(errors).toEqual({});
  return found!;
};

describe('writing a set', () => {
  test('adds up distance, swim time, rest, duration and what is booked', () => {
    const { totals, sentence } = result({ set: '10 x 100 on 1:30', pace: '1:07' });
    expect(totals).toMatchObject({ distance: 1000, swimTime: 67000, rest: 20700 });
    expect(totals).toMatchObject({ duration: 87700, booked: 90000 });
    expect(sentence).toBe('1000 m in 10 swims, booked for 15:00.');
  });

  test('writes the set in one spelling and names the readings that were taken', () => {
    const found = result({ set: '10x100 fr @ 1:30 d1-5' });
    expect(found.kept).toBe('10 x 100 free descend 1-5 on 1:30');
    expect(found.readings.map(({ code }) => code)).toContain('at-is-send-off');
  });

  test('points at the character that could not be read, and says what was expected', () => {
    const { errors, slip } = view({ set: 'Warm-up\n4 x 100 quickly' });
    expect(errors['set']).toMatch(/quickly.*expected/);
    expect(slip).toEqual({
      place: 'Line 2, character 9',
      line: '4 x 100 quickly',
      mark: `${' '.repeat(8)}▲`,
    });
  });

  test('shows only what stands near in a long line, the mark still below its character', () => {
    const { line, mark } = slipAt(`${'50 + '.repeat(40)}! + 50${' + 50'.repeat(20)}`, 200);
    expect(line.length).toBeLessThan(60);
    expect(line.charAt(mark.indexOf('▲'))).toBe('!');
  });

  test('answers breath-holding with the caution, in the set and in a comment', () => {
    expect(view({ set: '8 x 25 underwater' }).errors['set']).toMatch(/^Breath-holding can end/);
    const found = result({ set: '8 x 25 on :30 # no breath' });
    expect(found.cautions.join(' ')).toMatch(/blackout/);
  });

  test('without a pace it leaves open what hangs on it, and says so', () => {
    const { totals, cautions, sentence } = result({ set: '8 x 50 r 15', pace: '' });
    expect(totals).toMatchObject({ distance: 400, booked: null, swimTime: null });
    expect(barsOf(totals)).toEqual([]);
    expect(sentence).toMatch(/not known yet/);
    expect(cautions.join(' ')).toMatch(/neither a target nor a pace/);
  });

  test('takes swims that are alike in one row, and draws each as a bar', () => {
    const { totals } = result({ set: '2 x 100 on 1:30, 50 easy on 1:00', pace: '1:10' });
    expect(rowsOf(totals)).toEqual([
      { reps: 2, distance: 100, start: 0, swim: 7000, rest: 2000 },
      { reps: 1, distance: 50, start: 18000, swim: 3500, rest: 2500 },
    ]);
    expect(barsOf(totals)).toEqual([
      { from: 0, to: 7000 },
      { from: 9000, to: 16000 },
      { from: 18000, to: 21500 },
    ]);
  });

  test('says where a distance does not fit the pool, or a lane has no send-off', () => {
    expect(view({ set: '4 x 75', pool: '50m' }).errors['set']).toMatch(/whole/);
    expect(view({ set: '4 x 50 on :45 / :55', lane: '3' }).errors['lane']).toMatch(/lane 3/);
    expect(result({ set: '4 x 50 on :45 / :55', lane: '2' }).totals.booked).toBe(22000);
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...thursday, set: '8×50 r 15 # “hard”\n& more', pace: '1:05,3' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, thursday, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in the fields, it shows a result or says why not', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 30 }),
      fc.constantFrom('', '10 x 100 on 1:30', '3 x (4 x 50', '8 x 25 underwater', '1:10', '2'),
    );
    const fields = fc.record({
      pool: fc.constantFrom('25m', '50m', 'other'),
      length: text,
      unit: fc.constantFrom('m', 'yd'),
      set: text,
      pace: text,
      lane: text,
    });
    fc.assert(
      fc.property(fields, (given) => {
        const { result: found, errors } = viewOf(given);
        expect(found !== null).toBe(Object.keys(errors).length === 0);
        if (found !== null) expect(found.sentence).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
