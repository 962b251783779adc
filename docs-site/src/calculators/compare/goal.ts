import { type Comparison, formatTime, type GoalPlace, type Hundredths } from 'backhalf';

const places = {
  within: 'within the range',
  faster: 'faster than all of it',
  slower: 'slower than all of it',
  unknown: 'no range to hold it against',
} as const;

/** Where a goal lies against one range, in words. */
export const placeText = ({ place }: GoalPlace): string => places[place];

/** Where the goal lies against all of them, counted. */
export function goalSentence(goal: Hundredths, comparison: Comparison): string {
  const found = comparison.goal ?? [];
  const counted = (['within', 'faster', 'slower', 'unknown'] as const).flatMap((place) => {
    const count = found.filter((one) => one.place === place).length;
    return count === 0 ? [] : [`${words[place]} ${count}`];
  });
  return `The goal of ${formatTime(goal)} is ${counted.join(', ')} of ${found.length}.`;
}

const words = {
  within: 'within the range of',
  faster: 'faster than all the range of',
  slower: 'slower than all the range of',
  unknown: 'without a range to hold it against in',
} as const;
