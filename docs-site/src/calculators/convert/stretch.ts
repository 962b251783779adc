import { convertDistance, distanceAt, type Pool } from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { distanceText } from '~/ui/wording';
import { type Outcome, refused } from './answer';
import { poolText } from './fields';

/** Converts a distance between metres and yards, and says what it is in lengths. */
export function convertStretch(text: string, from: Pool, to: Pool): Outcome {
  const { count, error } = readCountText(text, 'Distance', { most: 1_000_000, whole: false });
  if (count === null) return refused('stretch', error ?? '');
  const distance = convertDistance(count, from.unit, to.unit);
  const lengths = Math.floor(distance / to.length + 1e-9); // a hair below a wall is at the wall
  const here = `${distanceText(count)} ${from.unit}`;
  const there = `${distanceText(distance)} ${to.unit}`;
  const walls = [lengths, lengths + 1].filter((n) => n > 0);
  return {
    answer: {
      headline: { label: `${here} in ${to.unit === 'm' ? 'metres' : 'yards'}`, figure: there },
      beside: walls.map((n) => ({
        label: `${n} length${n === 1 ? '' : 's'} of ${poolText(to)}`,
        figure: `${distanceText(distanceAt(to, n))} ${to.unit}`,
      })),
      sentence: `${here} is ${there}.`,
      cautions: [],
      table: null,
      sources: [
        {
          method: 'Yard',
          source: 'One yard is exactly 0.9144 m: international yard and pound agreement of 1959.',
        },
      ],
      working: ['The nearest walls on either side are shown beside it: swims end at a wall.'],
    },
  };
}
