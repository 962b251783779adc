import { type EstimatePair, formatTime } from 'backhalf';
import { gapText } from '~/ui/wording';
import type { CompareResult } from './model';

/** Each two estimates: how far apart, whether their ranges meet, and why they differ. */
export function Pairs({ result: { answered, comparison } }: { readonly result: CompareResult }) {
  if (comparison.pairs.length === 0) return null;
  return (
    <section class="pairs" aria-label="Why they differ">
      <p class="pairs-title">Why they differ, two by two</p>
      <ul>
        {comparison.pairs.map((pair) => (
          <li key={`${pair.faster}-${pair.slower}`}>
            <b>
              {answered[pair.faster]?.name} · {answered[pair.slower]?.name}
            </b>
            <p>
              {gapText(pair.difference)} apart; {meetingOf(pair)}.
            </p>
            <p class="why">{whyOf(pair, answered)}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What each of the two takes for granted, under the names used here. */
export function whyOf({ why, faster, slower }: EstimatePair, answered: CompareResult['answered']) {
  return [answered[faster], answered[slower]].reduce(
    (text, one) =>
      one === undefined ? text : text.replace(`${one.estimate.method} takes`, `${one.name} takes`),
    why,
  );
}

/** Whether their ranges meet, in words. */
export function meetingOf({ ranges, overlap }: EstimatePair): string {
  if (overlap !== null) {
    return `both ranges take in ${formatTime(overlap.low)} to ${formatTime(overlap.high)}`;
  }
  return ranges === 'apart' ? 'their ranges do not meet' : 'one has no range to hold against';
}
