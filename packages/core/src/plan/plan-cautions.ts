import { type Caution, cautionsWhere } from '../caution.js';
import type { Pool } from '../course/pool.js';
import type { Halves } from '../splits/halves.js';
import { finishOf } from '../splits/splits.js';
import { formatTime } from '../time/format-time.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import type { Edges } from './length-times.js';
import type { ReadShape } from './race-shape.js';

/** What to know before swimming by a plan. */
export function planCautions(
  shape: ReadShape,
  plan: {
    readonly pool: Pool;
    readonly distance: number;
    readonly edges: Edges;
    readonly halves: Halves | null;
    readonly difference: Hundredths | null;
  },
): readonly Caution[] {
  const { difference, edges } = plan;
  const stranger = borrowed(shape, plan);
  const plain = shape.kind === 'even' && edges.startCredit === 0 && edges.finishLift === 0;
  const asked = shape.kind === 'halves' ? shape.secondHalf : plain ? hundredths(0) : null;
  return cautionsWhere(
    [
      asked !== null && difference !== null && difference !== asked,
      'odd-hundredth',
      `The goal leaves an odd hundredth, which the first half takes: the halves differ by ${signed(difference)}, not ${signed(asked)}.`,
    ],
    [
      plan.halves?.interpolated === true,
      'halves-interpolated',
      'Halfway lies between two walls; its time is read off a straight line.',
    ],
    [stranger !== '', 'shape-borrowed', stranger],
  );
}

const signed = (time: Hundredths | null): string =>
  time === null ? '' : formatTime(time, { signed: true });

/** Whose shape it is, where it is not one swum over this distance by this swimmer. */
function borrowed(shape: ReadShape, { pool, distance }: { pool: Pool; distance: number }): string {
  if (shape.kind === 'championship') {
    const who = shape.sex === 'W' ? 'women' : 'men';
    const same = shape.distance === distance && pool.unit === 'm';
    const stretched = same ? '' : `, stretched to ${distance} ${pool.unit}`;
    return `The shape is the mean of ${shape.swims} swims in Olympic finals of ${who} over ${shape.distance} m in a 50 m pool${stretched}: what they did, not what suits everyone.`;
  }
  if (shape.kind !== 'profile') return '';
  const swum = finishOf(shape.swim).distance;
  if (swum === distance) return '';
  return `The shape was swum over ${swum} and is stretched to ${distance}; dive and finish are stretched with it.`;
}
