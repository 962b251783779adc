import { fieldsOf, textOf } from '../check.js';
import { foldSigns, LONGEST } from './fold-signs.js';
import { differenceOf, type Hundredths, hundredths } from './hundredths.js';

/** The fastest and slowest time that make sense for what is being read, both included. */
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
 * 1:05.00 or 1.05. An empty list says that the text is no time (or none that makes sense). Show the
 * readings to choose from where {@link parseTime} refuses a text as ambiguous.
 *
 * @param text - What was typed.
 * @param within - Keeps only readings from the fastest to the slowest time that makes sense, in
 *   hundredths of a second, both included.
 * @returns The readings in hundredths of a second, likeliest first.
 * @throws {@link PacingError} `wrong-shape` where it is not text, or the window not an object; `not-a-time` where
 *   a bound is not a time.
 * @example
 * timeReadings('3350').map((time) => formatTime(time)); // => ['33.50', '33:50.00']
 * @example
 * timeReadings('105', { from: hundredths(5000), to: hundredths(9000) }); // => [6500]
 */
export function timeReadings(text: string, within?: TimeWindow): readonly Hundredths[] {
  const written = textOf(text, 'A time');
  const readings = written.length > LONGEST ? [] : allReadings(tidy(written));
  if (within === undefined) return readings;
  const window = fieldsOf(within, 'The window');
  const from = differenceOf(window['from'], 'The fastest time');
  const to = differenceOf(window['to'], 'The slowest time');
  return readings.filter((time) => time >= from && time <= to);
}

/** Takes out blanks and a unit; a blank between two digits stays, as it could part two times. */
function tidy(text: string): string {
  if (/^[+-]?[\d:.,]+$/.test(text)) return text; // as nearly all texts are
  return foldSigns(text)
    .replace(/ +(?![\d ])|(?<![\d ]) +/g, '')
    .replaceAll("''", '"')
    .replaceAll("'", ':')
    .replace(/(?:"|s|sec)$/i, '')
    .replaceAll('"', '.');
}

/** A sign, then groups of digits; the first may be as long as shorthand is, or missing (`:45`). */
const FORM = /^([+-]?)(\d{0,7})(?:([:.,])(\d\d?))?(?:([:.,])(\d\d?))?(?:([:.,])(\d\d?))?$/;

function allReadings(text: string): readonly Hundredths[] {
  const parts = FORM.exec(text);
  if (parts === null) return [];
  const [, sign, first = '', a = '', second = '', b = '', third = '', c = '', fourth = ''] = parts;
  const separators = (a + b + c).replaceAll(',', '.');
  const counts = countsOf(separators, [first, second, third, fourth], sign !== '');
  const read = counts.length > 1 ? [...new Set(counts)] : counts; // 000 is one time in four ways
  return read.map((n) => hundredths(sign === '-' ? -n : n));
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

/** `1:05.3`, `1.05,30`, `65.3`, `1646.6`, `105`: what groups mean, by what stands between them. */
function countsOf(
  separators: string,
  [first, second, third, fourth]: readonly [string, string, string, string],
  signed: boolean,
): readonly number[] {
  if (separators === '') return fromDigits(first);
  if (separators === '.') return fromDecimal(first, second, signed);
  if (first.length > 3 || !inHour(second)) return [];
  switch (separators) {
    case ':':
    case ':.':
      return [clock(0, first, second, third)];
    case '..':
      return first === '' ? [] : [clock(0, first, second, third)];
    case '::':
    case '::.':
    case '...':
      return first !== '' && inHour(third) ? [clock(Number(first), second, third, fourth)] : [];
    default:
      return []; // 1.05:30 and 1:02.03.45 mix two ways of writing
  }
}

/** Two groups with a point or comma between them. */
function fromDecimal(whole: string, rest: string, signed: boolean): readonly number[] {
  const seconds = clock(0, '', whole, rest);
  const shorthand = inHour(whole.slice(-2))
    ? [clock(0, whole.slice(0, -2), whole.slice(-2), rest)]
    : [];
  // A sign is written before a difference, never before a clock time; and no lap takes 0 minutes.
  const asMinutes = whole !== '0' && inHour(rest) && !signed;
  switch (whole.length) {
    case 1:
      return asMinutes ? [clock(0, whole, rest), seconds] : [seconds];
    case 2:
      return [seconds];
    case 3:
      return [...shorthand, seconds];
    case 4:
      return shorthand;
    default:
      return [];
  }
}
