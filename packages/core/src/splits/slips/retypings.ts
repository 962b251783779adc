/** A time that a person may have meant, and how it came to be written otherwise. */
export interface Retyping {
  /** In hundredths of a second. */
  readonly time: number;
  /** Ends the sentence "It was probably typed with …". */
  readonly slip: string;
}

/** What may have been meant by a time, in hundredths: the usual slips of a hand, undone. */
export function retypings(time: number): readonly Retyping[] {
  const seconds = Math.floor(time / 100) % (time < 10_000 ? 100 : 60);
  const [tens, units] = [Math.floor(seconds / 10), seconds % 10];
  return [
    { time: time - 1000, slip: 'ten seconds too many' },
    { time: time + 1000, slip: 'ten seconds too few' },
    { time: time - 6000, slip: 'a minute too many' },
    { time: time + 6000, slip: 'a minute too few' },
    { time: time + 900 * (units - tens), slip: 'two digits swapped' },
    { time: time * 10, slip: 'the point one place too far left' },
    { time: Math.round(time / 10), slip: 'the point one place too far right' },
  ].filter((meant) => meant.time > 0 && meant.time !== time);
}
