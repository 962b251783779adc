import { formatTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heat } from '~/calculators/halves/example';
import { addressOf, type HalvesFields, shape, timesText, viewOf } from '~/calculators/halves/model';
import { readQuery } from '~/ui/address';

const view = (changed: Partial<HalvesFields>) => viewOf({ ...heat, ...changed });
const halvesIn = (changed: Partial<HalvesFields>) => {
  const { first, second } = view(changed).result?.halves ?? {};
  return [first, second].map((time) => time && formatTime(time));
};

describe('checking a swim’s halves', () => {
  test('cuts the example at halfway and says what came out', () => {
    const { result } = viewOf(heat);
    expect(result?.sentence).toBe('4:28.09: second half 1.41 faster, a negative split.');
    expect(result?.comparison.difference).toBe(-141);
    expect(result?.profile?.fastest).toBe(1);
  });

  test('takes any pool, yards as well as metres', () => {
    expect(view({ pool: '25yd', times: '28 30 31 29' }).result?.swim.marks.at(-1)?.distance).toBe(
      100,
    );
    const third = view({ pool: 'other', length: '33 1/3', times: '28 30 31' });
    expect(third.result?.swim.marks.at(-1)?.distance).toBe(100);
    const unread = view({ pool: 'other', length: 'long', times: '28 30' });
    expect(unread.errors.length).toBe('Length of the pool must be a number, like 20.');
    expect(unread.result).toBeNull();
    const twenty = view({ pool: 'other', length: '20 yd', unit: 'yd', times: '14 15 15 14' });
    expect(twenty.pool).toEqual({ length: 20, unit: 'yd' });
    expect(twenty.result?.swim.marks.at(-1)?.distance).toBe(80);
  });

  test('takes a time for every second or fourth length', () => {
    const { result } = view({ pool: '25m', every: '2', times: '31.0 33.0 33.5 32.5' });
    expect(result?.swim.marks.map(({ distance }) => distance)).toEqual([50, 100, 150, 200]);
  });

  test('takes running times, and gives the same halves as their laps', () => {
    const running = '31.42 1:05.52 1:40.17 2:14.75 2:49.06 3:22.93 3:56.13 4:28.09';
    expect(halvesIn({ kind: 'running', times: running })).toEqual(halvesIn({}));
  });

  test('reads halfway off a line where no time was taken there, and says so', () => {
    const { result } = view({ pool: '25m', every: '4', times: '1:00 1:02 1:03' });
    expect(result?.halves).toEqual({ first: 9100, second: 9400, interpolated: true });
    expect(result?.cautions.join(' ')).toMatch(/No time was taken at halfway/);
  });

  test('warns of the dive only where there was one', () => {
    expect(viewOf(heat).result?.cautions.join(' ')).toMatch(/dive/);
    expect(view({ start: 'push' }).result?.cautions.join(' ')).not.toMatch(/dive/);
  });

  test('calls a gap below the usual scatter even', () => {
    const near = view({ start: 'push', times: '30.00 30.10' }).result?.cautions;
    expect(near?.join(' ')).toMatch(/differ by 0\.3 %/);
    expect(view({ start: 'push', times: '30.00 31.00' }).result?.cautions).toEqual([]);
  });

  test('says what would do, and keeps showing what was read', () => {
    expect(view({ times: ' ' }).errors.times).toEqual(['Enter the times of the swim.']);
    expect(view({ times: '31.42' }).errors.times[0]).toMatch(/add one split from its first half/);
    const unread = view({ times: '31.42\n1:75' });
    expect(unread.errors.times[0]).toMatch(/^Lap 2: "1:75" has 75 where at most 59 can stand/);
    expect(unread.reading.times[0]?.time).toBe(3142);
    expect(view({ kind: 'running', times: '1:05 31.42' }).errors.times).toHaveLength(1);
  });

  test('points at a touch that came late, and hands over the mended swim as text', () => {
    const late = '28.49 30.17 30.20 40.46 20.43 30.34 30.32 29.90';
    const { result } = view({ times: late });
    expect(result?.slips.map(({ lap, kind }) => ({ lap, kind }))).toEqual([
      { lap: 4, kind: 'late-touch' },
    ]);
    expect(result?.sentence).toMatch(/Lap 4 may be wrong\.$/);
    const mended = result?.slips[0]?.mend;
    expect(viewOf({ ...heat, times: timesText(mended!, heat) }).result?.slips).toEqual([]);
    const running = { ...heat, kind: 'running' };
    const again = viewOf({ ...running, times: timesText(mended!, running) }).result;
    expect(again?.swim).toEqual(mended);
    expect(viewOf(heat).result?.slips).toEqual([]);
  });

  test('refuses more times than any swim has, before it counts them', () => {
    const { errors, result } = view({ times: '30.00 '.repeat(5000) });
    expect(errors.times).toEqual(['These are 5000 times; one swim has 1000 at most.']);
    expect(result).toBeNull();
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...heat, pool: 'other', length: '33,33', times: '31,4\n105→1:05.00\n?' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, heat, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in the fields, it shows halves or says why not', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.stringMatching(/^[\d:.,; \t\n→-]{0,60}$/),
      fc
        .array(fc.constantFrom('31.42', '105', '1.05,3', '50', 'Lap', '\n', '\t', ','), {
          maxLength: 40,
        })
        .map((parts) => parts.join(' ')),
    );
    const fields = fc.record({
      pool: fc.constantFrom('25yd', '25m', '50m', 'other'),
      length: text,
      unit: fc.constantFrom('m', 'yd'),
      every: fc.constantFrom('1', '2', '4'),
      kind: fc.constantFrom('laps', 'running'),
      start: fc.constantFrom('dive', 'push'),
      times: text,
    });
    fc.assert(
      fc.property(fields, (given) => {
        const { result, errors } = viewOf(given);
        expect(result !== null).toBe(errors.times.length === 0 && errors.length === null);
        expect(JSON.stringify(result) ?? '').not.toMatch(/NaN|Infinity|:null,"second/);
      }),
    );
  });
});
