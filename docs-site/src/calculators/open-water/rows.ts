import { crossCurrent, formatTime, type Hundredths, hundredths, type OpenWaterRow } from 'backhalf';
import type { TableRow } from '~/ui/NumberTable';
import { distanceText } from '~/ui/wording';
import type { WaterPlan } from './plan';

/** To the second: nobody reads a watch more closely at a buoy. */
export const toTheSecond = (t: Hundredths): Hundredths => hundredths(Math.round(t / 100) * 100);

/** A time as a watch shows it, minutes always: `0:50`. */
export function clock(t: Hundredths): string {
  const text = formatTime(toTheSecond(t), { decimals: 0 });
  return text.includes(':') ? text : `0:${text.padStart(2, '0')}`;
}

/** A row of the plan with its name and how the water runs on it. */
export interface NamedRow extends OpenWaterRow {
  readonly name: string;
  readonly water: 'still' | 'with' | 'against';
  /** Its time as the difference of what the watch shows, so that the column adds up. */
  readonly shown: Hundredths;
}

/** The rows of a plan, named by lap and leg; a leg across halfway is two. */
export function namedRows({ plan: { rows }, course, legs, laps }: WaterPlan): readonly NamedRow[] {
  return rows.map((row, i) => {
    const lap = Math.floor((row.leg - 1) / legs) + 1;
    const leg = `leg ${((row.leg - 1) % legs) + 1}`;
    const name = laps > 1 ? `Lap ${lap}, ${leg}` : `L${leg.slice(1)}`;
    const part =
      rows[i + 1]?.leg === row.leg
        ? ', to halfway'
        : rows[i - 1]?.leg === row.leg
          ? ', from halfway'
          : '';
    const current = course[row.leg - 1]?.current ?? 0;
    const before = rows[i - 1]?.elapsed ?? hundredths(0);
    return {
      ...row,
      name: name + part,
      water: current < 0 ? 'against' : current > 0 ? 'with' : 'still',
      shown: hundredths(toTheSecond(row.elapsed) - toTheSecond(before)),
    };
  });
}

/** The plan as a table, for the hand or the wrist. */
export function planTable(planned: WaterPlan) {
  const rows = namedRows(planned);
  const aimed = rows.some(({ heading }) => heading > 0);
  const efforts = rows.some(({ swimSpeed }) => swimSpeed !== rows[0]?.swimSpeed);
  return {
    caption: 'What the watch shows at each buoy',
    columns: [
      'End of',
      'Watch',
      'Leg time',
      'Distance (m)',
      'Over ground (m/s)',
      ...(efforts ? ['Through water (m/s)'] : []),
      ...(aimed ? ['Aim upstream (°)'] : []),
    ],
    rows: rows.map(
      (row): TableRow => ({
        head: row.name,
        cells: [
          clock(row.elapsed),
          clock(row.shown),
          distanceText(row.distance),
          row.groundSpeed.toFixed(2),
          ...(efforts ? [row.swimSpeed.toFixed(2)] : []),
          ...(aimed ? [row.heading.toFixed(0)] : []),
        ],
      }),
    ),
  };
}

/** Where to aim on each leg that is crossed, one sentence a leg. */
export function aims({ plan, course, legs }: WaterPlan): readonly string[] {
  const first = plan.rows.filter(({ leg }, i) => leg <= legs && plan.rows[i - 1]?.leg !== leg);
  return first.flatMap(({ leg, swimSpeed }) => {
    const across = course[leg - 1]?.cross ?? 0;
    if (across === 0) return [];
    const { heading, driftPer100 } = crossCurrent(swimSpeed, across);
    return `On leg ${leg} aim ${heading.toFixed(0)}° upstream of the buoy; straight at it, the water carries you ${driftPer100.toFixed(0)} m aside for every 100 m swum.`;
  });
}
