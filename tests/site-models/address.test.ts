import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { queryOf, readQuery, type Shape, throttled } from '~/ui/address';

const initial = { pool: '50m', times: '31.42\n34.10' };
const shape: Shape<typeof initial> = { pool: ['25m', '50m'], times: 'any' };

describe('a calculator’s address', () => {
  test('brings back whatever was typed', () => {
    fc.assert(
      fc.property(fc.constantFrom('25m', '50m'), fc.string({ unit: 'grapheme' }), (pool, times) => {
        const read = readQuery(queryOf({ pool, times }), initial, shape);
        expect(read).toEqual({ fields: { pool, times }, problems: [] });
      }),
    );
  });

  test('holds nothing unless it says its version', () => {
    expect(readQuery('?pool=25m', initial, shape)).toBeNull();
  });

  test('passes over what is unknown and keeps what is missing', () => {
    expect(readQuery('?v=1&colour=red&pool=25m', initial, shape)).toEqual({
      fields: { pool: '25m', times: initial.times },
      problems: [],
    });
  });

  test('names a choice that does not exist and keeps the rest', () => {
    const read = readQuery('?v=1&pool=17m&times=30', initial, shape);
    expect(read?.fields).toEqual({ pool: '50m', times: '30' });
    expect(read?.problems).toEqual([
      'The address says “pool=17m”, which is no choice here; “50m” stands instead, and the rest was kept.',
    ]);
  });

  test('says so where another version wrote it', () => {
    const read = readQuery('?v=2&pool=25m', initial, shape);
    expect(read?.fields.pool).toBe('25m');
    expect(read?.problems).toHaveLength(1);
  });
});

describe('writing at most every half second', () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  test('writes the first at once and then the latest', () => {
    vi.useFakeTimers();
    const written: number[] = [];
    const write = throttled<number>((value) => written.push(value), 500);
    for (let key = 1; key <= 9; key += 1) {
      write(key);
      vi.advanceTimersByTime(100);
    }
    expect(written).toEqual([1, 5]);
    vi.advanceTimersByTime(500);
    expect(written).toEqual([1, 5, 9]);
    vi.advanceTimersByTime(5000);
    write(10);
    expect(written).toEqual([1, 5, 9, 10]);
  });
});
