import { formatSet, type PlannedSet, parseSet, type SetItem } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, nearly, plannedSet } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';
import { isSound } from '../../sound.js';

/** A tree without the places it was read at. */
const bare = (set: PlannedSet): unknown =>
  JSON.parse(JSON.stringify(set.blocks, (key, value) => (key === 'source' ? undefined : value)));

const setOf = (...items: readonly unknown[]) =>
  ({ blocks: [{ name: null, items }], notes: [] }) as unknown as PlannedSet;

describe('formatSet', () => {
  test.each([
    ['20 x 100 on 1:30', '20 x 100 on 1:30'],
    ['8x50 r:15', '8 x 50 r 15'],
    ['3×{4*100 @ 1:30; 200 ez}', '3 x (4 x 100 on 1:30 + 200 easy)'],
    ['4 x 100 on 90 d1-2-3-4 FS K', '4 x 100 free kick descend 1-4 on 1:30'],
    ['broken 400 on 6:00:\n4 x 100 r 10', 'broken 400 on 6:00: 4 x 100 r 10'],
    [
      '2 x broken 200: 50 r 10 + 100 r 20 + 50, 100 ez',
      '2 x broken 200: 50 r 10 + 100 r 20 + 50\n100 easy',
    ],
    ['100-200-100 IM / 4:00 / 4:30', '100-200-100 IM on 4:00 / 4:30'],
    ['50 in 31.5, 50 in 0:30.0', '50 hold 31.50\n50 hold 30'],
    ['8 x 50 odd reps: kick / even reps: swim', '8 x 50 odds kick evens swim'],
    [
      'WU:400\n\n\nMS\n10 100s :10r // easy now\nCD - 200',
      'Warm-up\n400\n\nMain set\n10 x 100 r 10 # easy now\n\nCool-down\n200',
    ],
  ])('%j is written %j', (text, written) => {
    expect(formatSet(parseSet(text))).toBe(written);
    expect(formatSet(parseSet(written))).toBe(written);
  });

  test('what it writes is read back as the same set', () => {
    fc.assert(
      fc.property(plannedSet, (set) => {
        expect(bare(parseSet(formatSet(set)))).toEqual(set.blocks);
      }),
    );
  });

  test('written, read and written again it stays the same', () => {
    fc.assert(
      fc.property(plannedSet, (set) => {
        const text = formatSet(set);
        expect(formatSet(parseSet(text))).toBe(text);
      }),
    );
  });

  const swims = { type: 'swims', reps: 4, distances: [100] };
  test.each<[unknown, string]>([
    [{ ...swims, reps: 0 }, 'out-of-range'],
    [{ ...swims, reps: 10_001 }, 'out-of-range'],
    [{ ...swims, distances: [] }, 'wrong-shape'],
    [{ ...swims, distances: [12.5] }, 'out-of-range'],
    [{ ...swims, stroke: 'doggy' }, 'unknown-choice'],
    [{ ...swims, rest: -1 }, 'out-of-range'],
    [{ ...swims, target: 0 }, 'not-a-time'],
    [{ ...swims, sendOffs: [3_600_100] }, 'out-of-range'],
    [{ ...swims, sendOffs: [3000] }, 'set-ambiguous'],
    [{ ...swims, sendOffs: [9000], rest: 1000 }, 'set-contradiction'],
    [{ ...swims, over: { shape: 'descend', pattern: [1, 5] } }, 'set-contradiction'],
    [{ ...swims, over: { shape: 'descend', pattern: [4, 2] } }, 'set-contradiction'],
    [{ ...swims, odd: {} }, 'wrong-shape'],
    [{ ...swims, comment: 'two\nlines' }, 'wrong-shape'],
    [{ ...swims, comment: '' }, 'wrong-shape'],
    [{ type: 'rounds', rounds: 2, items: [] }, 'wrong-shape'],
    [{ type: 'rounds', rounds: 2, items: [{ ...swims, comment: 'inside' }] }, 'wrong-shape'],
    [{ type: 'rounds', rounds: 2, items: [swims], target: 9000 }, 'set-contradiction'],
    [{ type: 'rounds', rounds: 1, items: [swims, swims], broken: 400 }, 'set-contradiction'],
    [{ type: 'rounds', rounds: 1, items: [swims], broken: 500 }, 'set-contradiction'],
    [{ type: 'rounds', rounds: 5000, items: [swims] }, 'too-many-reps'],
    [{ type: 'lane' }, 'unknown-choice'],
    ['4 x 100', 'wrong-shape'],
  ])('%j is refused with %s', (item, code) => {
    expect(codeOf(() => formatSet(setOf(item)))).toBe(code);
  });

  test('only the first block may stand without a heading', () => {
    const block = { name: null, items: [swims] };
    const set = { blocks: [block, block], notes: [] } as unknown as PlannedSet;
    expect(codeOf(() => formatSet(set))).toBe('unknown-choice');
  });

  test('a set that holds itself is refused, deep or broad', () => {
    const deep: { type: string; rounds: number; items: unknown[] } = {
      type: 'rounds',
      rounds: 1,
      items: [],
    };
    deep.items.push(deep);
    expect(codeOf(() => formatSet(setOf(deep)))).toBe('wrong-shape');

    let broad: unknown = swims;
    for (let i = 0; i < 15; i += 1)
      broad = { type: 'rounds', rounds: 1, items: Array(10).fill(broad) };
    expect(codeOf(() => formatSet(setOf(broad)))).toBe('out-of-range');
  });

  test('what could not be read back is not written', () => {
    const huge = Array(20_000).fill({ ...swims, comment: 'x'.repeat(50_000) });
    expect(codeOf(() => formatSet(setOf(...huge)))).toBe('out-of-range');
    const long = Array(4000).fill({ ...swims, comment: 'as slow as the lane in front' });
    expect(refusal(() => formatSet(setOf(...long)))).toMatchObject({
      code: 'out-of-range',
      message: 'The set takes more than 100000 characters to write; write it in parts.',
    });
  });

  test('what fills the longest text that is read is still written', () => {
    const set = setOf({ ...swims, comment: 'x'.repeat(100_000 - '4 x 100 # '.length) });
    expect(parseSet(formatSet(set)).blocks).toMatchObject(set.blocks);
    const longer = setOf({ ...swims, comment: 'x'.repeat(100_001 - '4 x 100 # '.length) });
    expect(codeOf(() => formatSet(longer))).toBe('out-of-range');
  });

  test('whatever it is given, a text comes out or a PacingError', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          anything,
          fc.array(nearly(fc.constant(swims))).map((items) => setOf(...items)),
        ),
        fc.dictionary(
          fc.constantFrom('reps', 'distances', 'sendOffs', 'over', 'odd', 'items'),
          anything,
        ),
        (value, fields) => {
          expect(isSound(() => formatSet(value as PlannedSet))).toBe(true);
          expect(
            isSound(() => formatSet(setOf({ ...swims, ...fields } as unknown as SetItem))),
          ).toBe(true);
        },
      ),
    );
  });
});
