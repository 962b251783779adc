import {
  formatTime,
  type Hundredths,
  safeParseTime,
  type TimeWindow,
  timeReadings,
} from 'backhalf';

/** What a time field holds, and what it means. */
export interface TimeText {
  /** What was typed, as typed. */
  readonly typed: string;
  /** The time, once there is exactly one reading or one was chosen. */
  readonly time: Hundredths | null;
  /** Every reading, likeliest first, where there are several to choose from; else none. */
  readonly choices: readonly Hundredths[];
  /** What is wrong and what would do. */
  readonly error: string | null;
}

const arrow = '→';

/** The text a field holds once one of several readings was chosen: `105→1:05.00`. */
export const withChoice = (typed: string, time: Hundredths): string =>
  `${typed}${arrow}${formatTime(time)}`;

/**
 * Reads a time field. `label` is the field's own, to say what must be done; `within` keeps readings
 * that make sense, but never to the point of refusing the only one.
 */
export function readTimeText(text: string, label: string, within?: TimeWindow): TimeText {
  const cut = text.lastIndexOf(arrow);
  const chosenText = text.slice(cut + 1);
  const before = readingsOf(text.slice(0, Math.max(cut, 0)), within);
  const chosen = cut > 0 ? before.find((time) => formatTime(time) === chosenText) : undefined;
  if (chosen !== undefined) {
    return { typed: text.slice(0, cut), time: chosen, choices: before, error: null };
  }
  const unread = { typed: text, time: null, choices: [] };
  if (text.trim() === '') return { ...unread, error: `Enter ${lowerFirst(label)}.` };

  const readings = readingsOf(text, within);
  const [only] = readings;
  if (only === undefined) {
    const parsed = safeParseTime(text);
    if (!parsed.ok) return { ...unread, error: parsed.error.message };
    const least = within?.from === 0 ? 'zero or more' : 'more than zero';
    return { ...unread, error: `${label} must be ${least}.` };
  }
  if (readings.length === 1) return { ...unread, time: only, error: null };
  const list = readings.map((time) => formatTime(time));
  const error = `“${text.trim()}” could be ${list.slice(0, -1).join(', ')} or ${list.at(-1)}. Choose one.`;
  return { ...unread, choices: readings, error };
}

function readingsOf(text: string, within?: TimeWindow): readonly Hundredths[] {
  const sensible = within === undefined ? [] : timeReadings(text, within);
  return sensible.length > 0 ? sensible : timeReadings(text).filter((time) => time > 0);
}

const lowerFirst = (label: string): string =>
  `the ${label.charAt(0).toLowerCase()}${label.slice(1)}`;
