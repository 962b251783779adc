import { type Caution, cautionsWhere } from '../caution.js';
import { fieldsOf } from '../check.js';
import { formatTime } from '../time/format-time.js';
import { type Hundredths, timeOf } from '../time/hundredths.js';
import { staggerOf, swimsOf } from './lane-timing.js';

/** Less than this between one leaving and another coming in is a clash at the wall. A choice of ours. */
const CLEAR = 200;

/** A lane going round on one send-off, as {@link laneTraffic} looks at it. */
export interface CirclingLane {
  /** Time from one start to the next, in hundredths of a second. */
  readonly sendOff: Hundredths;
  /** The time each swimmer holds, in hundredths of a second, in the order they leave. */
  readonly swims: readonly Hundredths[];
  /** Time between two swimmers, in hundredths of a second; 5 s unless given (common practice). */
  readonly stagger?: Hundredths;
}

/**
 * What will go wrong in a lane that circles on one send-off: swimmers who miss it, who leave into one
 * coming in, who catch the one ahead, or a lane too full for its send-off. Less than 2 s between one leaving
 * and another coming in counts as a clash, which is a choice of ours. Lanes are made by {@link groupLanes}.
 *
 * @param lane - `sendOff`, `swims` (one a swimmer, in the order they leave) and `stagger` (5 s unless
 *   given), in hundredths of a second.
 * @returns The cautions that apply; none where the lane runs freely.
 * @throws {@link PacingError} `not-a-time`; `out-of-range` for no swimmer or far too many, or a stagger
 *   below zero; `wrong-shape`.
 * @example
 * const swims = [2400, 2500, 2600, 2700, 2800, 2900].map(hundredths);
 * const lane = { sendOff: parseTime('45.00'), swims };
 * laneTraffic(lane).map(({ code }) => code); // => ['lane-crowded', 'wall-clash']
 */
export function laneTraffic(lane: CirclingLane): readonly Caution[] {
  const { sendOff: every, swims: times, stagger: apart } = fieldsOf(lane, 'The lane');
  const sendOff = timeOf(every, 'The send-off');
  const swims = swimsOf(times);
  const stagger = staggerOf(apart);
  const [first = 0] = swims;
  const count = swims.length;
  const missed = swims.filter((swim) => swim > sendOff).length;
  const clash = clashIn(sendOff, swims, stagger);
  const caught = swims.findIndex((swim, i) => i > 0 && swim + stagger <= (swims[i - 1] as number));
  return cautionsWhere(
    [
      missed > 0,
      'missed-send-off',
      `${missed} of ${count} swimmers cannot make the send-off of ${formatTime(sendOff)}.`,
    ],
    [
      count > 1 && first <= (count - 1) * stagger,
      'lane-crowded',
      'The first swimmer is back before the last has left; make the lane smaller or let them leave closer together.',
    ],
    [
      count > 1 && count * stagger > sendOff,
      'lane-crowded',
      'The send-off is too short for all to leave before the first leaves again; make the lane smaller or the send-off longer.',
    ],
    [
      clash !== null,
      'wall-clash',
      clash === null
        ? ''
        : `Swimmer ${clash.leaving} leaves within ${CLEAR / 100} s of swimmer ${clash.incoming} coming in; change the send-off a little, or keep one side of the wall free.`,
    ],
    [
      caught > 0,
      'catches-up',
      `Swimmer ${caught + 1} catches the swimmer ahead within one rep; change the order or leave more room.`,
    ],
  );
}

/** The first pair of whom one leaves as the other comes in, in the round that repeats every send-off. */
function clashIn(
  sendOff: number,
  swims: readonly number[],
  stagger: number,
): { leaving: number; incoming: number } | null {
  for (const [i, swim] of swims.entries()) {
    for (const j of swims.keys()) {
      const after = (swim + (i - j) * stagger) % sendOff; // the arrival, after that departure
      const gap = Math.min(Math.abs(after), sendOff - Math.abs(after));
      if (i !== j && gap < CLEAR) return { leaving: j + 1, incoming: i + 1 };
    }
  }
  return null;
}
