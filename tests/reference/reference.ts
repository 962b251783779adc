import { expect, test } from 'vitest';

/**
 * How well the published value is known: `read` in the source itself, `quoted` by another text,
 * computed from `open data`, `common practice` without a source, `worked` by hand (checks the
 * arithmetic only), or recalled `from memory`.
 */
export type Standing =
  | 'read'
  | 'quoted'
  | 'open data'
  | 'common practice'
  | 'worked'
  | 'from memory';

/** One published table, next to what the library computes for each of its rows. */
export interface Reference<Input, Published> {
  /** The name of its data file. */
  readonly key: string;
  /** What is checked, as a heading. */
  readonly title: string;
  /** Where the values were published. */
  readonly source: string;
  readonly standing: Standing;
  readonly rows: readonly {
    /** The page, table or line of the source. */
    readonly place: string;
    readonly input: Input;
    readonly published: Published;
  }[];
  readonly compute: (input: Input) => Published;
  /** How far a number may lie from the published one, for the source's own rounding; 0 unless given. */
  readonly tolerance?: number;
  /** Writes an input or a value for a person; JSON unless given. */
  readonly show?: (value: Input | Published) => string;
}

/** One test a row: what the library computes is what was published. */
export function checkReference<Input, Published>(reference: Reference<Input, Published>): void {
  const { title, rows, compute, tolerance = 0 } = reference;
  test(`${title}: the table has rows`, () => {
    expect(rows.length).toBeGreaterThan(0);
  });
  test.each(rows)(`${title}: $place`, ({ input, published }) => {
    expectWithin(compute(input), published, tolerance);
  });
}

/** Equal, but that numbers, wherever they stand, may differ by the tolerance. */
function expectWithin(actual: unknown, wanted: unknown, tolerance: number): void {
  if (typeof actual === 'number' && typeof wanted === 'number') {
    // A hair for the binary fractions on either side, far below any rounding in print.
    const hair = tolerance === 0 ? 0 : 1e-9;
    expect(Math.abs(actual - wanted), `${actual} against ${wanted}`).toBeLessThanOrEqual(
      tolerance + hair,
    );
    return;
  }
  if (typeof actual === 'object' && actual !== null && typeof wanted === 'object' && wanted) {
    expect(Object.keys(actual)).toEqual(Object.keys(wanted));
    for (const [key, value] of Object.entries(wanted)) {
      expectWithin((actual as Record<string, unknown>)[key], value, tolerance);
    }
    return;
  }
  expect(actual).toEqual(wanted);
}
