import { lengthsIn } from '../course/pool.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { repsOf } from './notation/measure.js';
import type {
  SetBlock,
  SetDetails,
  SetItem,
  SetRounds,
  SetSwims,
  SwimManner,
} from './planned-set.js';
import type { CheckedPaces } from './set-paces.js';

/** One swim of a set as planned; null stands for what the set and the paces leave open. */
export interface PlannedSwim {
  /** When it starts, in hundredths of a second from the first start; or null. */
  readonly start: Hundredths | null;
  /** Its distance, in the pool's unit. */
  readonly distance: number;
  /** Its time, in hundredths of a second; or null. */
  readonly swim: Hundredths | null;
  /** Rest after it in hundredths of a second, below zero for a missed send-off; or null. */
  readonly rest: Hundredths | null;
}

type Time = Hundredths | null;
type Clocked = { -readonly [Field in keyof PlannedSwim]: PlannedSwim[Field] } & { stated: boolean };

const NONE = 0 as Hundredths;
const plus = (a: Time, b: Time): Time => (a === null || b === null ? null : hundredths(a + b));
const minus = (a: Time, b: Time): Time => (a === null || b === null ? null : hundredths(a - b));

/** A set swum out: every swim in order, and when each block is over. */
export interface SetClock {
  /** `stated` is false where nothing was said of the rest: taken as none, or null. */
  readonly swims: readonly Readonly<Clocked>[];
  /** When the slot of each block's last swim ends, in hundredths of a second; or null. */
  readonly ends: readonly Time[];
}

/** Swims a set out that was checked, every rep of every round. */
export function clockOf(blocks: readonly SetBlock[], paces: CheckedPaces): SetClock {
  const swims: Clocked[] = [];
  let now: Time = hundredths(0);

  function swimAll(item: SetItem, inherited: SwimManner): void {
    const count = item.type === 'swims' ? repsOf(item) : item.rounds;
    for (let i = 0; i < count; i++) {
      const manner = { ...inherited, ...item, ...(i % 2 === 0 ? item.odd : item.even) };
      if (item.type === 'swims') swimOne(item, i, manner);
      else swimRound(item, i, manner);
    }
  }

  function swimOne(item: SetSwims, i: number, manner: SwimManner): void {
    const distance = item.distances[i % item.distances.length] as number; // it is never empty
    if (paces.pool !== undefined) lengthsIn(paces.pool, distance);
    const swim = paces.timeOf(item, distance, manner);
    const sendOff = sendOffOf(item, paces.lane);
    // A single swim of which nothing is said runs on into the next; between reps nobody can tell.
    const unstated = repsOf(item) === 1 ? NONE : null;
    const rest = sendOff === null ? (item.rest ?? unstated) : minus(sendOff, swim);
    const stated = sendOff !== null || item.rest !== undefined;
    swims.push({ start: now, distance, swim, rest, stated });
    now = plus(now, sendOff ?? plus(swim, rest));
  }

  function swimRound(item: SetRounds, i: number, manner: SwimManner): void {
    const began = now;
    for (const part of item.items) swimAll(part, manner);
    const last = swims.at(-1) as Clocked; // rounds are never empty
    const between = i + 1 < item.rounds ? paces.restBetweenRounds : NONE;
    const sendOff = sendOffOf(item, paces.lane);
    const extra = item.rest ?? between;
    now = sendOff === null ? plus(now, extra) : plus(began, sendOff);
    last.rest =
      sendOff === null ? plus(last.rest, extra) : minus(minus(now, last.start), last.swim);
    last.stated ||= sendOff !== null || extra > 0;
  }

  const ends = blocks.map(({ items }) => {
    for (const item of items) swimAll(item, {});
    return now;
  });
  return { swims, ends };
}

function sendOffOf({ sendOffs }: SetDetails, lane: number): Time {
  const [only, ...others] = sendOffs ?? [];
  if (sendOffs === undefined || only === undefined) return null;
  const own = others.length === 0 ? only : sendOffs[lane - 1];
  if (own !== undefined) return own;
  const message = `The set has send-offs for ${sendOffs.length} lanes; choose one of them, not lane ${lane}.`;
  throw new PacingError('out-of-range', message, lane);
}
