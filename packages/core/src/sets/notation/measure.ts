import { greatestOf, sumOf } from '../../statistics.js';
import type { SetItem } from '../planned-set.js';

/** How many swims a part is, rounds multiplied out. */
export function repsOf(item: SetItem): number {
  if (item.type === 'swims') return item.reps * item.distances.length;
  return item.rounds * sumOf(item.items.map(repsOf));
}

/** How far a part is, in the pool's unit. */
export function distanceOf(item: SetItem): number {
  if (item.type === 'swims') return item.reps * sumOf(item.distances);
  return item.rounds * sumOf(item.items.map(distanceOf));
}

/** How far it is from one start to the next that its send-off is for, in the pool's unit. */
export function strideOf(item: SetItem): number {
  if (item.type === 'swims') return greatestOf(item.distances);
  return sumOf(item.items.map(distanceOf));
}
