/**
 * What the dive and the first lap are worth once: by how much the first 50 m was faster than the mean
 * of the laps between the first and the last, in a 50 m pool. A mean over all published swims.
 *
 * @see Official results of the Olympic Games of 2000, 2004, 2008 and 2016, via the open dataset
 *   swimset; a test works the figures out again from the file.
 */
export const START_CREDIT: readonly {
  /** Race distance, in metres. */
  readonly distance: number;
  /** The credit, in hundredths of a second. */
  readonly credit: number;
  /** How many swims it is the mean of, a count. */
  readonly swims: number;
}[] = [
  { distance: 200, credit: 221, swims: 574 },
  { distance: 400, credit: 248, swims: 392 },
  { distance: 800, credit: 246, swims: 149 },
  { distance: 1500, credit: 263, swims: 186 },
];
