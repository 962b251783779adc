import { formatTime, hundredths, parseTime } from 'backhalf';
import { expect, test } from 'vitest';

test('every hundredth from 0 to 10 hours is read back as it was written', () => {
  for (let n = 0; n <= 3_600_000; n += 1) {
    const time = hundredths(n);
    // Bare comparison: an assertion for each of 3.6 million would be the slow part.
    if (parseTime(formatTime(time)) !== time) expect.fail(`${n} is lost`);
  }
}, 120_000);
