import { compareEstimates, type Estimate, hundredths } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { refusal } from '../../refusal.js';

const good = {
  time: hundredths(100_000),
  range: { low: hundredths(98_000), high: hundredths(102_000), covers: '90 %' },
  method: 'power-law',
  assumptions: ['Pace keeps fading.'],
  cautions: [{ code: 'contested', message: 'It is contested.' }],
} as const;
const { range } = good;
const read = (estimate: unknown) => compareEstimates([estimate as Estimate]).estimates[0];

describe('an estimate that went through JSON', () => {
  test('is read as it was, and nothing else with it', () => {
    expect(read(JSON.parse(JSON.stringify(good)))).toEqual(good);
    expect(read({ ...good, note: 'mine' })).toEqual(good);
    expect(read({ ...good, range: null })).toEqual({ ...good, range: null });
    expect(read({ ...good, range: { ...range, high: range.low } })).toBeTruthy();
  });

  test.each([
    ['no object', 'text', 'wrong-shape', 'Estimate 1 must be'],
    ['no time', { ...good, time: 0 }, 'not-a-time', "Estimate 1's time must"],
    ['a range left out', { ...good, range: undefined }, 'wrong-shape', "Estimate 1's range must"],
    [
      'no fast end',
      { ...good, range: { ...range, low: null } },
      'not-a-time',
      "Estimate 1's range's fast end",
    ],
    [
      'no slow end',
      { ...good, range: { ...range, high: '1' } },
      'not-a-time',
      "Estimate 1's range's slow end",
    ],
    [
      'no word on what it covers',
      { ...good, range: { ...range, covers: 90 } },
      'wrong-shape',
      "What Estimate 1's range covers",
    ],
    [
      'a range the wrong way round',
      { ...good, range: { ...range, low: range.high, high: range.low } },
      'out-of-range',
      "Estimate 1's range must run",
    ],
    ['no method', { ...good, method: null }, 'wrong-shape', "Estimate 1's method must"],
    [
      'no assumptions',
      { ...good, assumptions: 'none' },
      'wrong-shape',
      "Estimate 1's assumptions must",
    ],
    [
      'an assumption that is no text',
      { ...good, assumptions: [1] },
      'wrong-shape',
      'An assumption must',
    ],
    ['no cautions', { ...good, cautions: null }, 'wrong-shape', "Estimate 1's cautions must"],
    ['a caution that is none', { ...good, cautions: ['care'] }, 'wrong-shape', 'A caution must'],
    [
      'a caution without a code',
      { ...good, cautions: [{ message: '' }] },
      'wrong-shape',
      "A caution's code",
    ],
    [
      'a caution without words',
      { ...good, cautions: [{ code: '' }] },
      'wrong-shape',
      "A caution's message",
    ],
  ])('is refused with %s', (_, estimate, code, start) => {
    const error = refusal(() => read(estimate));
    expect(error.code).toBe(code);
    expect(error.message.startsWith(start), error.message).toBe(true);
  });
});
