import type { TrackRecordRow } from 'backhalf';
import { nameOf, percent } from './track';

const row = 58; // a name and the bar under it
const left = 4; // per cent of the width; heights are pixels
const right = 96;

/** Each method's bias as a mark and the range of 90 % as a bar, against the swum time. */
export function TrackChart({ rows }: { readonly rows: readonly TrackRecordRow[] }) {
  const errors = rows.flatMap(({ range }) => [1 / range.high - 1, 1 / range.low - 1]);
  const reach = Math.ceil(Math.max(...errors.map(Math.abs)) * 100) / 100;
  const x = (error: number) => left + ((right - left) * (error + reach)) / (2 * reach);
  const bottom = 30 + rows.length * row;
  const ticks = [-reach, 0, reach];
  const worst = rows.reduce((a, b) => (Math.abs(b.bias) > Math.abs(a.bias) ? b : a));
  const finding = `Of ${rows.length} ways to estimate a race from shorter ones, the furthest off on average was ${nameOf(worst)}, by ${percent(worst.bias)} %.`;
  return (
    <svg
      class="split-chart track-chart"
      role="img"
      aria-label={finding}
      width="100%"
      height={bottom + 44}
    >
      {ticks.map((tick) => (
        <g key={tick} class={tick === 0 ? 'tick mean' : 'tick'}>
          <line x1={`${x(tick)}%`} x2={`${x(tick)}%`} y1="16" y2={bottom} />
          <text class="foot-tick" x={`${x(tick)}%`} y={bottom + 18}>
            {percent(tick)}
          </text>
        </g>
      ))}
      {rows.map((one, i) => {
        const y = 30 + i * row + 38;
        return (
          <g key={nameOf(one)} class="series-1">
            <text class="row-name" x="0" y={y - 16}>
              {nameOf(one)}
            </text>
            <line
              x1={`${x(1 / one.range.high - 1)}%`}
              x2={`${x(1 / one.range.low - 1)}%`}
              y1={y}
              y2={y}
            />
            <circle cx={`${x(one.bias)}%`} cy={y} r="5" />
          </g>
        );
      })}
      <text class="foot" x={`${left}%`} y={bottom + 38}>
        ← promised too fast, %
      </text>
      <text class="foot end" x={`${right}%`} y={bottom + 38}>
        too slow →
      </text>
    </svg>
  );
}
