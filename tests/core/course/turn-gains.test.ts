import { convertTime, hundredths, LCM, parseTime, SCM, TURN_GAINS } from 'backhalf';
import { expect, test } from 'vitest';

const gainOf = (key: string) => TURN_GAINS.find((each) => each.key === key)?.gains.free;

test('each gain says where it was published, and each key is used once', () => {
  expect(new Set(TURN_GAINS.map(({ key }) => key)).size).toBe(TURN_GAINS.length);
  for (const { gains, source } of TURN_GAINS) {
    expect(source.length).toBeGreaterThan(20);
    for (const gain of Object.values(gains)) expect(hundredths(gain)).toBeGreaterThan(0);
  }
});

// Worked from two published records each: what 30 turns gained, shared out.
test.each([
  ['record-1500-men', '14:31.02', '14:08.06'],
  ['record-1500-women', '15:20.48', '15:19.71'],
])('%s', (key, long, short) => {
  const exact = (parseTime(long) - parseTime(short)) / 30;
  expect(gainOf(key)).toBe(Math.round(exact));
  const swim = { time: parseTime(long), distance: 1500, stroke: 'free' as const, from: LCM };
  const { time } = convertTime(swim, SCM, { gainPerTurn: gainOf(key)! });
  expect(Math.abs(time - parseTime(short))).toBeLessThanOrEqual(15); // 30 × half a hundredth
});
