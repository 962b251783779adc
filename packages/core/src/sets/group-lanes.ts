import { type Caution, cautionsWhere } from '../caution.js';
import { choiceOf, countOf, fieldsOf, itemsOf, textOf } from '../check.js';
import { PacingError } from '../errors.js';
import { type Hundredths, hundredths, timeOf } from '../time/hundredths.js';
import { timeAtPace } from '../time/pace.js';
import { bestGroups, type LaneObjective, OBJECTIVES } from './lane-objective.js';
import { restOn, type SendOffOptions, sendOffFor } from './send-off.js';

const MOST_SWIMMERS = 10_000;

/** A swimmer of a squad, for {@link groupLanes}. */
export interface LaneSwimmer {
  /** The swimmer's name. */
  readonly name: string;
  /** The pace the swimmer holds, in hundredths of a second per 100 of the pool's unit. */
  readonly pace: Hundredths;
}

/** How a squad is put into lanes. */
export interface LaneOptions {
  /** How many lanes there are, a count. */
  readonly lanes: number;
  /** How many swimmers a lane holds at most, a count; no limit unless given. */
  readonly maxPerLane?: number;
  /** What the grouping keeps least; `largest-spread` unless given. */
  readonly objective?: LaneObjective;
  /** The distance of a rep, in the pool's unit; give it with `rest` for a send-off of each lane. */
  readonly repDistance?: number;
  /** Rest that everyone gets at least, in hundredths of a second; give it with `repDistance`. */
  readonly rest?: Hundredths;
  /** The step send-offs are called in, in hundredths of a second; 5 s unless given. */
  readonly step?: Hundredths;
}

/** One lane of a plan. */
export interface LaneGroup {
  /** Its swimmers from fast to slow, with the rest each gets, in hundredths of a second, or null. */
  readonly swimmers: readonly (LaneSwimmer & { readonly rest: Hundredths | null })[];
  /** Its slowest pace less its fastest, in hundredths of a second per 100. */
  readonly spread: Hundredths;
  /** The send-off that gives everyone the wanted rest, in hundredths of a second, or null. */
  readonly sendOff: Hundredths | null;
}

/** A squad in lanes. */
export interface LanePlan {
  /** The lanes in use, fastest first. */
  readonly lanes: readonly LaneGroup[];
  /** What was kept least. */
  readonly objective: LaneObjective;
  /** Its least value, a number of hundredths of a second per 100; squared for `least-squares`. */
  readonly cost: number;
  /** What to know before taking the plan to the pool. */
  readonly cautions: readonly Caution[];
}

/**
 * Puts a squad into lanes by pace, so that the swimmers of each lane are as alike as can be: an exact
 * optimum, not a rule of thumb.
 *
 * By default the worst lane is made as good as it can be (`largest-spread`), because one swimmer who
 * does not fit holds up a whole lane. Among equally good groupings the one with the most even lanes
 * is taken, then the one whose slowest lane has fewest swimmers. Swimmers of one pace keep the order
 * they were given in. A lane that nobody needs is left out. Whether a lane then runs freely, ask
 * {@link laneTraffic}.
 *
 * @param swimmers - The squad: names, and paces in hundredths of a second per 100 of the pool's unit.
 * @param options - `lanes` and `maxPerLane` as counts; `objective`; for send-offs `repDistance` in the
 *   pool's unit, `rest` and `step` in hundredths of a second.
 * @returns The lanes from fast to slow; times in hundredths of a second.
 * @throws {@link PacingError} `too-few-lanes` where not all fit; `out-of-range`, `not-a-time`,
 *   `unknown-choice`, `too-large` or `wrong-shape` where a field is not what it should be.
 * @example
 * const squad = [
 *   { name: 'Mara Quill', pace: parseTime('1:02.00') },
 *   { name: 'Ivo Tarn', pace: parseTime('1:08.00') },
 *   { name: 'Bea Loxley', pace: parseTime('1:03.00') },
 * ];
 * const plan = groupLanes(squad, { lanes: 2, repDistance: 100, rest: fromSeconds(15) });
 * plan.lanes.map(({ swimmers }) => swimmers.map(({ name }) => name));
 * // => [['Mara Quill', 'Bea Loxley'], ['Ivo Tarn']]
 * plan.lanes.map(({ sendOff }) => sendOff); // => [8000, 8500]
 * @see Fisher 1958, J. Am. Stat. Assoc. 53 (from memory): the best groups of a sorted row have no gaps.
 */
export function groupLanes(swimmers: readonly LaneSwimmer[], options: LaneOptions): LanePlan {
  const asked = fieldsOf(options, 'The options');
  const squad = squadOf(swimmers);
  const count = squad.length;
  const lanes = countOf(asked['lanes'], 'The number of lanes');
  const { maxPerLane = Math.max(1, count) } = asked;
  const most = countOf(maxPerLane, 'The number of swimmers a lane holds');
  const { objective: wanted = 'largest-spread' } = asked;
  const objective = choiceOf(wanted, OBJECTIVES, 'The objective');
  if (lanes * most < count) {
    const message = `${lanes} lanes of ${most} hold ${lanes * most} swimmers, not ${count}; open more lanes or allow more in each.`;
    throw new PacingError('too-few-lanes', message, options);
  }
  const paces = squad.map(({ pace }) => pace);
  const grouped = (cap: number) =>
    bestGroups(paces, { groups: Math.min(lanes, count), most: cap }, objective);
  const { ends, cost } = count === 0 ? { ends: [], cost: 0 } : grouped(most);
  return {
    lanes: ends.map((end, i) => laneOf(squad.slice(ends[i - 1] ?? 0, end), asked)),
    objective,
    cost,
    cautions: cautionsWhere([
      most < count && grouped(count).cost < cost,
      'cap-forces-spread',
      `At most ${most} in a lane puts swimmers of different paces together; open another lane or allow more in each for closer ones.`,
    ]),
  };
}

/** A lane of at least one swimmer, from fast to slow; its send-off is made for the slowest. */
function laneOf(group: readonly LaneSwimmer[], asked: Record<string, unknown>): LaneGroup {
  const { repDistance, rest, step } = asked;
  const fastest = group[0]!.pace;
  const slowest = group[group.length - 1]!.pace;
  const timed = repDistance !== undefined || rest !== undefined;
  const swim = (pace: Hundredths) => timeAtPace(pace, repDistance as number);
  const wanted = { rest, step } as SendOffOptions; // checked by sendOffFor
  const sendOff = timed ? sendOffFor(swim(slowest), wanted) : null;
  return {
    swimmers: group.map(({ name, pace }) => {
      return { name, pace, rest: sendOff && restOn(sendOff, swim(pace)) };
    }),
    spread: hundredths(slowest - fastest),
    sendOff,
  };
}

function squadOf(value: unknown): readonly LaneSwimmer[] {
  const squad = itemsOf(value, 'The swimmers');
  countOf(squad.length, 'The number of swimmers', 0, MOST_SWIMMERS);
  return squad
    .map((item, i) => {
      const { name, pace } = fieldsOf(item, `Swimmer ${i + 1}`);
      return {
        name: textOf(name, `Swimmer ${i + 1}'s name`),
        pace: timeOf(pace, `Swimmer ${i + 1}'s pace`),
      };
    })
    .sort((a, b) => a.pace - b.pace);
}
