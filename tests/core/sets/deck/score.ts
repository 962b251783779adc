import { assignTouches, type Touch } from 'backhalf';
import { simulate } from './simulate.js';

export interface Score {
  readonly right: number;
  readonly wrongFlagged: number;
  readonly rightFlagged: number;
}

/** Shares over a number of simulated sets: touches read rightly, wrong ones flagged, right ones flagged. */
export function score(
  sets: number,
  spread: number,
  says: 'nothing' | 'mark',
  known: 'all' | 'past' = 'all',
): Score {
  let [total, right, wrongFlagged, rightFlagged] = [0, 0, 0, 0];
  for (let seed = 1; seed <= sets; seed++) {
    const { plan, touches } = simulate(seed, spread);
    const given = touches.map(
      ({ time, kind }): Touch => (says === 'mark' ? { time, mark: kind } : { time }),
    );
    const reading = assignTouches(plan, given, { known });
    reading.touches.forEach((touch, i) => {
      const truth = touches[i]!;
      const same =
        touch.swimmer === truth.swimmer && touch.rep === truth.rep && touch.mark === truth.kind;
      // Of a double tap either may be taken, and the other left.
      const twin = touches.some(
        (other) =>
          other !== truth &&
          other.swimmer === truth.swimmer &&
          other.rep === truth.rep &&
          other.kind === truth.kind,
      );
      const good = same || (touch.swimmer === null && twin);
      total++;
      if (good) right++;
      if (touch.doubtful) good ? rightFlagged++ : wrongFlagged++;
    });
  }
  const wrong = total - right;
  return {
    right: right / total,
    wrongFlagged: wrong === 0 ? 1 : wrongFlagged / wrong,
    rightFlagged: rightFlagged / right,
  };
}
