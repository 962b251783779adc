import type { PacingErrorCode } from '../../errors.js';
import type { SetItem, SetSwims } from '../planned-set.js';
import { fastestTarget, MOST_REPS, shortestSendOff } from './limits.js';
import { repsOf, strideOf } from './measure.js';
import { writeSendOff, writeTime } from './write-time.js';

/** What keeps a part from being swum as it says, and the detail that says so. */
export interface Flaw {
  readonly code: PacingErrorCode;
  readonly message: string;
  readonly about?: keyof SetSwims | 'broken';
}

/** The first flaw of a part; its own parts are known to have none. */
export function flawOf(item: SetItem): Flaw | null {
  const reps = repsOf(item);
  if (reps > MOST_REPS) return { code: 'too-many-reps', message: tooMany(reps) };
  const broken = item.type === 'rounds' ? item.broken : undefined;
  const whole = broken === undefined ? null : brokenFlaw(broken, strideOf(item));
  return whole ?? sendOffFlaw(item) ?? targetFlaw(item) ?? patternFlaw(item, reps);
}

export function tooMany(reps: number): string {
  return `The set is ${reps} swims long; at most ${MOST_REPS} are read, so plan it in parts.`;
}

/** The pieces of a broken swim add up to it. */
export function brokenFlaw(broken: number, swum: number): Flaw | null {
  if (swum === broken) return null;
  const message = `The pieces add up to ${swum}, but the broken swim is ${broken}; change one of them.`;
  return { code: 'set-contradiction', message, about: 'broken' };
}

function sendOffFlaw(item: SetItem): Flaw | null {
  const { sendOffs = [], rest } = item;
  if (sendOffs.length > 0 && rest !== undefined) {
    const message =
      'A send-off and a rest are both given; keep one, or put brackets around the set and the rest after them.';
    return { code: 'set-contradiction', message, about: 'rest' };
  }
  const distance = strideOf(item);
  const short = sendOffs.find((sendOff) => sendOff < shortestSendOff(distance));
  if (short === undefined) return null;
  const time = writeSendOff(short);
  const message = `"on ${time}" for ${distance} could be a start every ${time}, faster than anyone swims it, or ${time} of rest; write "r ${writeTime(short)}" for rest, or a longer send-off.`;
  return { code: 'set-ambiguous', message, about: 'sendOffs' };
}

function targetFlaw(item: SetItem): Flaw | null {
  const { target, distances = [] } = item as Partial<SetSwims>; // rounds have neither
  if (target === undefined) return null;
  const [distance, ...others] = distances;
  if (distance === undefined || others.length > 0) {
    const message = 'A target is the time of one distance; write it behind each distance.';
    return { code: 'set-contradiction', message, about: 'target' };
  }
  if (target >= fastestTarget(distance)) return null;
  const message = `"${writeTime(target)}" for ${distance} could be the time of the whole ${distance}, faster than anyone swims it, or a pace; write the whole time.`;
  return { code: 'set-ambiguous', message, about: 'target' };
}

function patternFlaw({ over }: SetItem, reps: number): Flaw | null {
  const pattern = over?.pattern ?? [];
  const [from, to] = pattern;
  if (from === undefined || to === undefined) return null;
  const size = from < to ? to : from * pattern.length;
  if (from < to ? size <= reps : size === reps) return null;
  const message = `"${over?.shape} ${pattern.join('-')}" is for ${size} reps, but there are ${reps}; change one of them.`;
  return { code: 'set-contradiction', message, about: 'over' };
}
