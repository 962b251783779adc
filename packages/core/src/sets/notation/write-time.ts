import { formatTime } from '../../time/format-time.js';
import type { Hundredths } from '../../time/hundredths.js';

/** A time as sets are written: `1:30`, `15`, `31.50`. */
export function writeTime(time: Hundredths): string {
  return formatTime(time, { decimals: time % 100 === 0 ? 0 : 2 });
}

/** A send-off as it stands on the clock: `:45`. */
export function writeSendOff(time: Hundredths): string {
  return writeTime(time).replace(/^(?!.*:)/, ':');
}
