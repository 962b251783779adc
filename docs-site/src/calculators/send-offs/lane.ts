import {
  clockFinishes,
  clockReadings,
  type Hundredths,
  hundredths,
  laneTraffic,
  restOn,
  type SetDuration,
  sendOffFor,
  setDuration,
} from 'backhalf';
import { clockText } from '~/ui/wording';
import type { SetAsked } from './model';

/** What the hand shows as a swimmer leaves and comes in, in hundredths of a second. */
export interface HandRow {
  readonly rep: number;
  readonly swimmers: readonly { readonly leaves: Hundredths; readonly in: Hundredths }[];
}

export interface LaneResult {
  /** The set in short: `10 × 100 in 1:12`. */
  readonly set: string;
  readonly sendOff: Hundredths;
  /** The rest that is left on it. */
  readonly rest: Hundredths;
  /** The next shorter send-off of the clock, where the swim still fits in; or null. */
  readonly shorter: { readonly sendOff: Hundredths; readonly rest: Hundredths } | null;
  readonly duration: SetDuration;
  /** Rep by rep, until the hand shows the same again. */
  readonly hand: readonly HandRow[];
  /** Where the first swimmer leaves on the clock. */
  readonly marks: readonly ClockMark[];
  /** Whether the rows start over after the last of them. */
  readonly repeats: boolean;
  readonly cautions: readonly string[];
  /** The result in one sentence. */
  readonly sentence: string;
}

const step = 500;

/** The send-off of one lane whose swimmers all hold one time. */
export function laneResult(asked: SetAsked, swim: Hundredths, swimmers: number): LaneResult {
  const { rest: wanted, reps, distance, stagger } = asked;
  const sendOff = sendOffFor(swim, { rest: wanted });
  const rest = restOn(sendOff, swim);
  const less = sendOff - step;
  const swims = Array.from({ length: swimmers }, () => swim);
  const timing = { sendOff, reps, stagger };
  const leaves = clockReadings(hundredths(0), { ...timing, swimmers });
  const finishes = clockFinishes(hundredths(0), { ...timing, swims });
  const rows = (leaves[0] ?? []).map((_, rep) => ({
    rep: rep + 1,
    swimmers: leaves.flatMap((row, i) => {
      const [left, came] = [row[rep], finishes[i]?.[rep]];
      return left === undefined || came === undefined ? [] : [{ leaves: left, in: came }];
    }),
  }));
  const again = rows.findIndex(({ rep, swimmers: [first] }) => rep > 1 && first?.leaves === 0);
  const sentence = `On ${clockText(sendOff)} a swim of ${clockText(swim)} leaves ${clockText(rest)} of rest.`;
  return {
    set: `${reps} × ${distance} in ${clockText(swim)}`,
    sendOff,
    rest,
    shorter:
      less >= swim ? { sendOff: hundredths(less), rest: restOn(hundredths(less), swim) } : null,
    duration: setDuration({ ...timing, swimmers, swim }),
    hand: again < 0 ? rows : rows.slice(0, again),
    marks: marksOf(asked, sendOff),
    repeats: again > 0,
    cautions: laneTraffic({ sendOff, swims, stagger }).map(({ message }) => message),
    sentence,
  };
}

/** A mark at the rim of the clock: where the hand is, and which reps leave there. */
export interface ClockMark {
  /** In hundredths of a second from the top. */
  readonly at: Hundredths;
  readonly reps: readonly number[];
}

/** Where the first swimmer leaves, one mark for all reps that leave on the same second. */
function marksOf(asked: Pick<SetAsked, 'reps'>, sendOff: Hundredths): readonly ClockMark[] {
  const [row = []] = clockReadings(hundredths(0), { sendOff, reps: asked.reps });
  const marks = new Map<Hundredths, number[]>();
  for (const [i, at] of row.entries()) marks.set(at, [...(marks.get(at) ?? []), i + 1]);
  return [...marks].map(([at, reps]) => ({ at, reps }));
}
