import { fieldsOf, textOf } from '../check.js';
import { foldSigns, LONGEST } from './fold-signs.js';
import { differenceOf, type Hundredths, hundredths } from './hundredths.js';

/** The fastest and slowest time that make sense for what is being read. */
export interface TimeWindow {
  /** The fastest, in hundredths of a second. */
  readonly from: Hundredths;
  /** The slowest, in hundredths of a second. */
  readonly to: Hundredths;
}

/**
 * Every time a coach could mean by what was typed, likeliest first.
 *
 * Digits alone are deck shorthand, and often more than one time: `105` is most likely 1:05.00, but
 * may be 10.50, 1.05 or 105 seconds. A point may stand for the colon a keypad lacks: `1.05` is
 * 1:05.00 or 1.05. An empty list says that the text is no time (or none that makes sense).
 *
 * @param text - What was typed.
 * @param within - Keeps only readings from the fastest to the slowest time that makes sense, in
 *   hundredths of a second, both included.
 * @returns The readings in hundredths of a second, likeliest first.
 * @throws {@link PacingError} `wrong-shape`, `not-a-time` where the bounds are none.
 * @example
 * timeReadings('3350'); // => [3350, 203000]
 * @example
 * timeReadings('105', { from: hundredths(5000), to: hundredths(9000) }); // => [6500]
 */
export function timeReadings(text: string, within?: TimeWindow): readonly Hundredths[] {
  const written = textOf(text, 'A time');
  const readings = written.length > LONGEST ? [] : allReadings(tidy(foldSigns(written)));
  if (within === undefined) return readings;
  const window = fieldsOf(within, 'The window');
  const from = differenceOf(window['from'], 'The fastest time');
  const to = differenceOf(window['to'], 'The slowest time');
  return readings.filter((time) => time >= from && time <= to);
}

/** Takes out blanks and a unit; a blank between two digits stays, as it could part two times. */
function tidy(signs: string): string {
  return signs
    .replace(/ +(?![\d ])|(?<![\d ]) +/g, '')
    .replaceAll("''", '"')
    .replaceAll("'", ':')
    .replace(/(?:"|s|sec)$/i, '')
    .replaceAll('"', '.');
}

function allReadings(text: string): readonly Hundredths[] {
  const [, sign, body = ''] = /^([+-]?)(.*)$/s.exec(text) ?? [];
  const signed = sign !== '';
  const counts = /^\d+$/.test(body) ? fromDigits(body) : fromGroups(body, signed);
  return [...new Set(counts)].map((n) => hundredths(sign === '-' ? -n : n));
}

/** Hours, minutes, seconds and the digits after the point, as hundredths. */
const clock = (hours: number, minutes: string, seconds: string, decimals = ''): number =>
  hours * 360_000 +
  Number(minutes) * 6_000 +
  Number(seconds) * 100 +
  Number(decimals.padEnd(2, '0'));

const inHour = (digits: string): boolean => /^[0-5]\d$/.test(digits);

/** `105`, `3350`, `10530`: digits without a separator. */
function fromDigits(digits: string): readonly number[] {
  const part = (from: number, to?: number): string => digits.slice(from, to);
  switch (digits.length) {
    case 1:
    case 2:
      return [clock(0, '', digits)];
    case 3:
      return [
        ...(inHour(part(1)) ? [clock(0, part(0, 1), part(1))] : []),
        clock(0, '', part(0, 2), part(2)),
        clock(0, '', part(0, 1), part(1)),
        clock(0, '', digits),
      ];
    case 4: {
      const short = clock(0, '', part(0, 2), part(2));
      if (!inHour(part(2))) return [short];
      const long = clock(0, part(0, 2), part(2));
      // Nobody swims a 50 under 20 s, so 1646 is a long swim first, and 3350 a lap first.
      return short < 2000 ? [long, short] : [short, long];
    }
    case 5:
      if (!inHour(part(1, 3))) return [];
      return [
        clock(0, part(0, 1), part(1, 3), part(3)),
        ...(inHour(part(3)) ? [clock(Number(part(0, 1)), part(1, 3), part(3))] : []),
      ];
    case 6:
      return inHour(part(2, 4)) ? [clock(0, part(0, 2), part(2, 4), part(4))] : [];
    case 7:
      return inHour(part(1, 3)) && inHour(part(3, 5))
        ? [clock(Number(part(0, 1)), part(1, 3), part(3, 5), part(5))]
        : [];
    default:
      return [];
  }
}

/** `1:05.3`, `1.05,30`, `65.3`, `1646.6`: groups of digits between separators. */
function fromGroups(text: string, signed: boolean): readonly number[] {
  if (!/^(\d{1,4}|(?=:))([:.,]\d{1,2}){1,3}$/.test(text)) return [];
  const colons = text.replace(/[^:]/g, '').length;
  if (!/^[^.,]*:[^:]*$/.test(text) && colons > 0) return []; // a colon after a point
  const [first = '', second = '', third = '', fourth] = text.split(/[:.,]/);
  const groups = text.split(/[:.,]/).length;

  if (groups === 2 && colons === 0) return fromDecimal(first, second, signed);
  if (first.length > 3 || !inHour(second)) return [];
  if (groups === 2) return [clock(0, first, second)];
  if (groups === 3 && colons < 2) return [clock(0, first, second, third)];
  if (groups - colons > 2 && colons > 0) return []; // 1:02.03.45 mixes two ways of writing
  return inHour(third) ? [clock(Number(first), second, third, fourth)] : [];
}

/** Two groups with a point or comma between them. */
function fromDecimal(whole: string, rest: string, signed: boolean): readonly number[] {
  const seconds = clock(0, '', whole, rest);
  const shorthand = inHour(whole.slice(-2))
    ? [clock(0, whole.slice(0, -2), whole.slice(-2), rest)]
    : [];
  if (whole.length === 4) return shorthand;
  if (whole.length === 3) return [...shorthand, seconds];
  // A sign is written before a difference, never before a clock time; and no lap takes 0 minutes.
  const asMinutes = whole.length === 1 && whole !== '0' && inHour(rest) && !signed;
  return asMinutes ? [clock(0, whole, rest), seconds] : [seconds];
}
