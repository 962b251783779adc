import { show } from '../../show.js';
import { formatTime } from '../../time/format-time.js';
import type { Hundredths } from '../../time/hundredths.js';
import { timeReadings } from '../../time/time-readings.js';
import { LONGEST_TIME } from './limits.js';
import type { Reader } from './reader.js';

/** A time as it stands in a set, before it is known what it is the time of. */
export interface WrittenTime {
  readonly text: string;
  readonly place: number;
  readonly readings: readonly Hundredths[];
}

/** The time that must stand here: `1:30`, `:45`, `:60`, `15`, `20"`, `10 s`, `1'30`, `2 min`. */
export function needTime(r: Reader): WrittenTime {
  r.takeSign(':'); // r:10
  if (!r.isNumber()) throw r.unexpected('a time, such as 1:30');
  const { text, start: place } = r.next();
  const minutes = r.take('seconds') === undefined && r.take('minutes') !== undefined;
  // `:60` and `:5` are seconds, as on the pace clock; `2 min` is 2:00.
  const plain = minutes && !text.includes(':') ? `${text}:00` : text.replace(/^:(?=\d\d?$)/, '');
  const readings = timeReadings(plain).filter((time) => time <= LONGEST_TIME);
  return { text, place, readings };
}

/** The one time that was meant, where nothing under `least` makes sense. */
export function readingOf(r: Reader, time: WrittenTime, least: number): Hundredths {
  const [likeliest] = time.readings;
  const plausible = time.readings.filter((reading) => reading >= least);
  const written = show(time.text);
  if (likeliest === undefined) {
    throw r.error('set-unreadable', `${written} is no time; write one such as 1:30.`, time.place);
  }
  if (plausible.length > 1) {
    const times = plausible.map((reading) => formatTime(reading)).join(' or ');
    const message = `${written} could be ${times}; write it with a colon.`;
    throw r.error('time-ambiguous', message, time.place);
  }
  return plausible[0] ?? likeliest;
}

/** The same of a send-off or a rest, where `:45,50` is more likely 45 s and a set of 50. */
export function startOrRest(r: Reader, time: WrittenTime, least: number): Hundredths {
  if (!time.text.includes(',')) return readingOf(r, time, least);
  const message = `${show(time.text)} could be one time, or a time and the next set; write a point, or a blank after the comma.`;
  throw r.error('set-ambiguous', message, time.place);
}
