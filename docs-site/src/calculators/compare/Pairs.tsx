import { type EstimatePair, formatTime } from 'backhalf';
import { gapText } from '~/ui/wording';
import type { CompareResult } from './model';

/** Each two estimates: how far apart, whether their ranges meet, and why they differ. */
export function Pairs({ result: { answered, comparison } }: { readonly result: CompareResult }) {
  if (comparison.pairs.length === 0) return null;
  return (
    <section class="pairs" aria-label="Each two of them">
      <p class="pairs-title">Each two of them</p>
      <ul>
        {comparison.pairs.map((pair) => (
          <li key={`${pair.faster}-${pair.slower}`}>
            <b>
              {answered[pair.faster]?.name} · {answered[pair.slower]?.name}
            </b>
            <p>
              {gapText(pair.difference)} apart; {meetingOf(pair)}.
            </p>
            <p class="why">{pair.why.replace(/^./, (letter) => letter.toUpperCase())}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Whether their ranges meet, in words. */
export function meetingOf({ ranges, overlap }: EstimatePair): string {
  if (overlap !== null) {
    return `both ranges take in ${formatTime(overlap.low)} to ${formatTime(overlap.high)}`;
  }
  return ranges === 'apart' ? 'their ranges do not meet' : 'one has no range to hold against';
}
