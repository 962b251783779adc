import { hundredths, type LaneTiming } from 'backhalf';
import { expect, test } from 'vitest';
import { staggerOf, swimsOf, timingOf } from '../../../packages/core/src/sets/lane-timing.js';
import { codeOf, refusal } from '../../refusal.js';

const timing: LaneTiming = { sendOff: hundredths(9000), reps: 10 };

test('one swimmer, and five seconds apart, unless told', () => {
  expect(timingOf({ ...timing })).toEqual({ ...timing, stagger: 500, swimmers: 1 });
});

test.each([
  ['no send-off', { sendOff: 0 }, 'not-a-time'],
  ['no reps', { reps: 0 }, 'out-of-range'],
  ['half a rep', { reps: 1.5 }, 'out-of-range'],
  ['more reps than a day has', { reps: 10_001 }, 'out-of-range'],
  ['nobody', { swimmers: 0 }, 'out-of-range'],
  ['more than a lane holds', { swimmers: 101 }, 'out-of-range'],
  ['leaving before the one ahead', { stagger: -1 }, 'out-of-range'],
])('refuses %s', (_, wrong, code) => {
  expect(codeOf(() => timingOf({ ...timing, ...wrong }))).toBe(code);
});

test('swimmers may leave together', () => {
  expect(staggerOf(0)).toBe(0);
});

test('a lane has at least one swim, and says which is no time', () => {
  expect(swimsOf([6700, 6850])).toEqual([6700, 6850]);
  expect(codeOf(() => swimsOf([]))).toBe('out-of-range');
  expect(codeOf(() => swimsOf(Array(101).fill(6700)))).toBe('out-of-range');
  expect(refusal(() => swimsOf([6700, '1:08'])).message).toContain('Swim 2');
});
