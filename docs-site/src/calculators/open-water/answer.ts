import { formatTime, fromSeconds, type OpenWaterEffectName, pacePer } from 'backhalf';
import { distanceText } from '~/ui/wording';
import type { CurrentRead } from './current';
import type { WaterPlan } from './plan';
import { clock } from './rows';

export const effectWords: Readonly<Record<OpenWaterEffectName, string>> = {
  drafting: 'behind others',
  wetsuit: 'in a wetsuit',
};

/** A plan in one sentence. */
export function sentenceOf({ plan }: WaterPlan): string {
  const halfway = `${clock(plan.halfway.time)} at halfway, ${distanceText(plan.halfway.distance)} m`;
  return `${halfway}, and ${clock(plan.time)} at the finish; ${clock(plan.stillWater)} in still water.`;
}

/** Which way a current ran on the way out, in words. */
export const wayOut = ({ reading }: CurrentRead): string =>
  reading.cost === 0
    ? 'no current shows'
    : reading.current < 0
      ? 'against the way out'
      : 'with the way out';

/** The pace in still water that a speed is, per 100 m. */
export const paceOf = (speed: number): string =>
  formatTime(pacePer(fromSeconds(1000 / speed), 1000), { decimals: 1 });

/** A current that was read, in one sentence. */
export function readSentence(read: CurrentRead): string {
  const { speed, current, cost } = read.reading;
  return `The water ran at ${Math.abs(current).toFixed(2)} m/s, ${wayOut(read)}; the swimmer at ${speed.toFixed(2)} m/s through it. Out and back cost ${clock(cost)}.`;
}
