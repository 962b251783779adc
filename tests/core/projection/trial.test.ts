import { fitCriticalSpeed, fitPowerLaw, hundredths, powerLawThrough, type Trial } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { codeOf } from '../../refusal.js';

const swims = (...list: readonly (readonly [number, number])[]): Trial[] =>
  list.map(([distance, time]) => ({ distance, time: hundredths(time) }));
const good = swims([200, 14_000], [400, 29_500]);
const [first] = good;

// Decided once for both models.
describe.each([
  ['fitCriticalSpeed', fitCriticalSpeed],
  ['fitPowerLaw', fitPowerLaw],
])('%s refuses', (_, fit) => {
  test.each([
    ['no trial', [], 'too-few-trials'],
    ['one trial', [first], 'too-few-trials'],
    ['the same trial twice', [first, first], 'trial-repeated'],
    ['one distance with two times', swims([200, 14_000], [200, 14_100]), 'trial-repeated'],
    ['a repeat among others', [...good, { ...first!, time: 13_999 }], 'trial-repeated'],
    ['a longer swim at the same speed', swims([200, 14_000], [400, 28_000]), 'trials-contradict'],
    ['a longer swim that was faster', swims([200, 14_000], [400, 27_999]), 'trials-contradict'],
    ['a longer swim in the same time', swims([200, 14_000], [400, 14_000]), 'trials-contradict'],
    [
      'one contradiction among three',
      swims([200, 14_000], [400, 29_500], [800, 58_000]),
      'trials-contradict',
    ],
    ['a distance of zero', [first, { distance: 0, time: 100 }], 'out-of-range'],
    ['a distance below one metre', [first, { distance: 0.5, time: 100 }], 'out-of-range'],
    ['a distance that is no number', [first, { distance: '400', time: 29_500 }], 'out-of-range'],
    ['a distance past a million', [first, { distance: 1e6 + 1, time: 1e8 }], 'out-of-range'],
    [
      'a distance of less than a metre in yards',
      [first, { distance: 1, unit: 'yd', time: 100 }],
      'out-of-range',
    ],
    ['a distance in feet', [first, { distance: 1500, unit: 'ft', time: 29_500 }], 'unknown-choice'],
    ['a time of zero', [first, { distance: 400, time: 0 }], 'not-a-time'],
    ['a time that is no whole number', [first, { distance: 400, time: 295.5 }], 'not-a-time'],
    ['a time of months', [first, { distance: 400, time: 1e9 + 1 }], 'out-of-range'],
    ['a trial that is none', [first, null], 'wrong-shape'],
    ['what is no list', { 0: first, length: 1 }, 'wrong-shape'],
  ])('%s', (_name, trials, wanted) => {
    expect(codeOf(() => fit(trials as Trial[]))).toBe(wanted);
  });

  test('nothing at the very edge', () => {
    expect(() => fit(swims([1, 1], [1e6, 1e9]))).not.toThrow();
    expect(() => fit(swims([200, 14_000], [400, 28_001]))).not.toThrow();
  });
});

test('the message names the swims that contradict each other', () => {
  expect(() => fitCriticalSpeed(swims([800, 58_000], [200, 14_000], [400, 29_500]))).toThrow(
    'The 800 m was swum no slower than the 400 m; check both times or leave one out.',
  );
  expect(() => fitPowerLaw([first!, first!])).toThrow(
    'Two trials are of 200 m; keep the better one.',
  );
  expect(() => fitPowerLaw([first!])).toThrow('A fit needs two trials or more, not 1; add one.');
  expect(() => fitPowerLaw([first!, { distance: 400, time: hundredths(0) }])).toThrow(
    "Trial 2's time must be",
  );
});

describe('trials in yards', () => {
  const yards = swims([500, 34_500], [1000, 71_500]).map(
    (trial): Trial => ({ ...trial, unit: 'yd' }),
  );
  const metres = swims([457.2, 34_500], [914.4, 71_500]);

  test('are fitted as the metres they are, and come back in metres', () => {
    expect(fitCriticalSpeed(yards)).toEqual(fitCriticalSpeed(metres));
    expect(fitPowerLaw(yards)).toEqual(fitPowerLaw(metres));
    expect(powerLawThrough(yards[0]!, 1.05)).toEqual(powerLawThrough(metres[0]!, 1.05));
    expect(fitCriticalSpeed(yards).trials).toEqual(metres);
  });

  test('stand beside others in metres, in the order of what was swum', () => {
    const mixed: Trial[] = [...swims([400, 29_800]), yards[0]!, { ...good[0]!, unit: 'm' }];
    expect(fitCriticalSpeed(mixed).trials.map(({ distance }) => distance)).toEqual([
      200, 400, 457.2,
    ]);
  });

  test('are repeated where they come to one distance', () => {
    const twice: Trial[] = [yards[0]!, metres[0]!];
    expect(codeOf(() => fitCriticalSpeed(twice))).toBe('trial-repeated');
  });
});

test('trials keep no more than a micrometre of their distance, and only their two fields', () => {
  const odd = [
    { ...first!, note: 'fresh' },
    { distance: 400.00000001, time: hundredths(29_500) },
  ];
  expect(fitCriticalSpeed(odd).trials).toEqual(good);
});
