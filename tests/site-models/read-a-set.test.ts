import { formatTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tuesday } from '~/calculators/read-a-set/example';
import { type SetFields, viewOf } from '~/calculators/read-a-set/model';

const view = (change: Partial<SetFields> = {}) => viewOf({ ...tuesday, ...change } as SetFields);
const honest = (change: Partial<SetFields>) => {
  const { result } = view(change);
  return result?.reading.honestPace ? formatTime(result.reading.honestPace) : null;
};

describe('reading a rep set', () => {
  test('the example reads without an error', () => {
    const { result, errors } = view();
    expect(errors.reps).toEqual([]);
    expect(result?.reading.reps).toHaveLength(20);
    expect(result?.race?.optimism).toBeGreaterThan(0);
  });

  test.each([
    ['blanks', '31.5 33.5\n31.5 33.5'],
    ['tabs and decimal commas', '31,5\t33,5\n31,5\t33,5'],
    ['semicolons', '31.5;33.5\r\n31.5;33.5'],
    ['commas', '31.5,33.5\n31.5,33.5'],
    ['numbered lines and a heading', 'rep out back\n1 31.5 33.5\n2 31.5 33.5'],
    ['digits alone', '3150 3350\n3150 3350'],
    ['quarters', '15 16.5 16.7 16.8\n15 16.5 16.7 16.8'],
  ])('reads reps with %s', (_, reps) => {
    expect(view({ reps }).errors.reps).toEqual([]);
    expect(honest({ reps })).toBe('1:07.00');
  });

  test('reads what the watch shows at halfway and at the wall', () => {
    expect(honest({ kind: 'running', reps: '31.5 1:05.0\n31.5 65' })).toBe('1:07.00');
  });

  test('whole reps alone give no honest pace, and say so', () => {
    const { result } = view({ reps: '1:05\n1:06' });
    expect(result?.race).toBeNull();
    expect(result?.sentence).toMatch(/no time at halfway|no second half/);
  });

  test('a line that cannot be read is named, by rep and time', () => {
    const { errors, result } = view({ reps: '31.5 33.5\n31.5 soon' });
    expect(errors.reps.join()).toMatch(/Rep 2, time 2/);
    expect(result).toBeNull();
  });

  test('a rep that took twice as long is pointed out, and by number', () => {
    const reps = Array(10).fill('31.5 33.5').with(3, '31.5 93.5').join('\n');
    expect(view({ reps }).result?.cautions[0]).toMatch(/Rep 4 may hold a slip/);
  });

  test('the time of the whole set gives the rest', () => {
    const { result } = view({ reps: '31.5 33.5\n31.5 33.5', known: 'total', rest: '2:30' });
    expect(result?.reading.rest).toBe(2000);
    const short = view({ reps: '31.5 33.5\n31.5 33.5', known: 'total', rest: '2:00' });
    expect(short.errors.rest).toMatch(/add up to 2:10.00/);
  });

  test('whatever stands in the fields, there is a view and no NaN in it', () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('', '31.5 33.5', '0', '−1', '1e9', '105', '100'),
    );
    const fields = fc.record({
      pool: fc.constantFrom('25m', '25yd', 'other'),
      length: text,
      unit: fc.constantFrom('m', 'yd'),
      distance: text,
      kind: fc.constantFrom('halves', 'running'),
      reps: text,
      known: fc.constantFrom('sendOff', 'rest', 'total', 'nothing'),
      rest: text,
      race: text,
    });
    fc.assert(
      fc.property(fields, (all) => {
        const seen = viewOf(all as SetFields);
        if (seen.result !== null)
          expect(seen.result.sentence).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
