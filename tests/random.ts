/** FC_SEED and FC_RUNS repeat a run or lengthen it; fixed unless given, so that a red run can be repeated. */
export const seed = Number(process.env['FC_SEED'] ?? 20_260_901);
export const runs = Number(process.env['FC_RUNS'] ?? 100);

/** Random numbers from 0 to 1, the same for the same seed: for loops too long for fast-check. */
export function numbersFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    // mulberry32: a counter, stirred.
    state = (state + 0x6d2b79f5) >>> 0;
    let n = Math.imul(state ^ (state >>> 15), state | 1);
    n ^= n + Math.imul(n ^ (n >>> 7), n | 61);
    return ((n ^ (n >>> 14)) >>> 0) / 2 ** 32;
  };
}
