import {
  groupLanes,
  type Hundredths,
  type LaneGroup,
  type LaneSwimmer,
  laneTraffic,
  setDuration,
  timeAtPace,
} from 'backhalf';
import { clockText } from '~/ui/wording';
import type { SetAsked } from './model';

export interface PlannedLane extends LaneGroup {
  /** When its last swimmer has finished, in hundredths of a second from the first start; or null. */
  readonly finished: Hundredths | null;
}

export interface SquadResult {
  /** The set in short: `10 × 100`. */
  readonly set: string;
  /** From fast to slow. */
  readonly lanes: readonly PlannedLane[];
  /** When the last lane is done, in hundredths of a second. */
  readonly finished: Hundredths;
  /** The greatest difference of paces in one lane, in hundredths of a second per 100. */
  readonly spread: Hundredths;
  readonly cautions: readonly string[];
  /** The result in one sentence. */
  readonly sentence: string;
}

/** A squad put into lanes, each with its send-off and what goes wrong on it. */
export function squadResult(
  asked: SetAsked,
  swimmers: readonly LaneSwimmer[],
  room: { readonly lanes: number; readonly maxPerLane: number },
): SquadResult {
  const { distance, rest, reps, stagger } = asked;
  const plan = groupLanes(swimmers, { ...room, repDistance: distance, rest });
  const traffic: string[] = [];
  const lanes = plan.lanes.map((lane, i): PlannedLane => {
    if (lane.sendOff === null) return { ...lane, finished: null };
    const swims = lane.swimmers.map(({ pace }) => timeAtPace(pace, distance));
    const found = laneTraffic({ sendOff: lane.sendOff, swims, stagger });
    traffic.push(...found.map(({ message }) => `Lane ${i + 1}: ${message}`));
    const timing = { sendOff: lane.sendOff, reps, stagger, swimmers: swims.length };
    const last = swims.at(-1);
    const { finished } = setDuration(last === undefined ? timing : { ...timing, swim: last });
    return { ...lane, finished };
  });
  const finished = Math.max(0, ...lanes.map((lane) => lane.finished ?? 0)) as Hundredths;
  const spread = Math.max(0, ...lanes.map((lane) => lane.spread)) as Hundredths;
  const sendOffs = lanes.map(({ sendOff }) => (sendOff === null ? 'none' : clockText(sendOff)));
  return {
    set: `${reps} × ${distance}`,
    lanes,
    finished,
    spread,
    cautions: [...plan.cautions.map(({ message }) => message), ...traffic],
    sentence: `${swimmers.length} swimmers in ${lanes.length} ${lanes.length === 1 ? 'lane' : 'lanes'}, on ${sendOffs.join(', ')}.`,
  };
}
