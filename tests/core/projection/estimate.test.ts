import { expect, test } from 'vitest';
import { raceToRaceRange } from '../../../packages/core/src/projection/estimate.js';

// 1.645 × 1.4 % is 2.303 %.
test.each([
  [100_500, 98_185, 102_815],
  [10_000, 9770, 10_230],
  [1, 1, 1],
])('one swimmer’s races about %d lie from %d to %d', (time, low, high) => {
  expect(raceToRaceRange(time)).toMatchObject({ low, high });
});

test('the range says what it covers, and what it does not', () => {
  const { covers } = raceToRaceRange(100_500);
  expect(covers).toContain('90 %');
  expect(covers).toContain('Stewart and Hopkins 2000');
  expect(covers).toContain('How far the method itself is off, nobody has measured');
});
