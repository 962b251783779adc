import type { Caution, CautionCode } from '../caution.js';
import { fieldsOf, itemsOf, textOf } from '../check.js';
import { PacingError } from '../errors.js';
import { timeOf } from '../time/hundredths.js';
import type { TimeRange } from '../time/time-range.js';
import type { Estimate } from './estimate.js';

/** An estimate out of plain data; `what` starts the sentence: "Estimate 2". */
export function estimateOf(value: unknown, what: string): Estimate {
  const { time, range, method, assumptions, cautions } = fieldsOf(value, what);
  return {
    time: timeOf(time, `${what}'s time`),
    range: range === null ? null : rangeOf(range, `${what}'s range`),
    method: textOf(method, `${what}'s method`),
    assumptions: itemsOf(assumptions, `${what}'s assumptions`).map((text) =>
      textOf(text, 'An assumption'),
    ),
    cautions: itemsOf(cautions, `${what}'s cautions`).map(cautionOf),
  };
}

function rangeOf(value: unknown, what: string): TimeRange {
  const { low, high, covers } = fieldsOf(value, what);
  const range = {
    low: timeOf(low, `${what}'s fast end`),
    high: timeOf(high, `${what}'s slow end`),
    covers: textOf(covers, `What ${what} covers`),
  };
  if (range.low <= range.high) return range;
  throw new PacingError(
    'out-of-range',
    `${what} must run from fast to slow; swap its ends.`,
    value,
  );
}

function cautionOf(value: unknown): Caution {
  const { code, message } = fieldsOf(value, 'A caution');
  return {
    code: textOf(code, "A caution's code") as CautionCode,
    message: textOf(message, "A caution's message"),
  };
}
