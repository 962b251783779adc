// Choices of ours: above any practice, and low enough that no text or tree is slow to read.

/** Characters in a text. */
export const LONGEST_TEXT = 100_000;
/** Brackets inside brackets. */
export const DEEPEST = 20;
/** Swims in a set, rounds multiplied out. */
export const MOST_REPS = 10_000;
/** One distance, in the pool's unit. */
export const LONGEST_DISTANCE = 100_000;
/** Ten hours, in hundredths of a second. */
export const LONGEST_TIME = 3_600_000;

/** Faster than anyone repeats it, in hundredths of a second per unit of distance: 50 s per 100. */
const FASTEST = 50;
/** What a dive and a single sprint may gain on that, in hundredths of a second. */
const DIVE = 700;

/** The shortest send-off that can be one: below it, `on :30` is more likely a rest. */
export function shortestSendOff(distance: number): number {
  return distance * FASTEST;
}

/** The fastest target that can be the time of the whole distance, and not a pace. */
export function fastestTarget(distance: number): number {
  return Math.max(1, distance * FASTEST - DIVE);
}
