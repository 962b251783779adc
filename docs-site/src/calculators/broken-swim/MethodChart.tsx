import { formatTime, type Hundredths } from 'backhalf';
import type { Method } from './methods';

interface Props {
  readonly methods: readonly Method[];
  /** The pieces added, where they are as long as the race. */
  readonly swum: Hundredths | null;
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

const left = 2; // per cent of the width, so that it fits any; heights are pixels
const right = 98;
const first = 60;
const pitch = 46;
const steps = [50, 100, 200, 500, 1000, 2000, 3000, 6000, 12_000, 30_000, 60_000];
const mostTicks = 6;

/** Each method's time and range on one line of time, faster to the left. The table holds the same. */
export function MethodChart({ methods, swum, finding }: Props) {
  const rows = methods.flatMap(({ name, estimate }) => (estimate ? [{ name, ...estimate }] : []));
  const times = rows.flatMap(({ time, range }) => (range ? [range.low, range.high] : [time]));
  const all = swum === null ? times : [...times, swum];
  const [fastest, slowest] = [Math.min(...all), Math.max(...all)];
  const step = steps.find((size) => size * (mostTicks - 1) >= slowest - fastest + size) ?? 360_000;
  const from = Math.floor(fastest / step);
  const to = Math.max(Math.ceil(slowest / step), from + 1);
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => ((from + i) * step) as Hundredths);
  const x = (time: number) => left + ((right - left) * (time / step - from)) / (to - from);
  const foot = first + pitch * rows.length;

  return (
    <svg
      class="split-chart methods"
      role="img"
      aria-label={finding}
      width="100%"
      height={foot + 30}
    >
      <text class="axis-name" x="0" y="16">
        ← faster
      </text>
      {ticks.map((tick, i) => (
        <g key={tick} class="tick">
          <line x1={`${x(tick)}%`} x2={`${x(tick)}%`} y1={first - 14} y2={foot} />
          <text
            class={ends[i === 0 ? 0 : i === ticks.length - 1 ? 1 : 2]}
            x={`${x(tick)}%`}
            y={foot + 20}
          >
            {formatTime(tick, { decimals: 0 })}
          </text>
        </g>
      ))}
      {swum !== null && (
        <g class="swum">
          <line x1={`${x(swum)}%`} x2={`${x(swum)}%`} y1={first - 22} y2={foot} />
          <text x={`${x(swum)}%`} y={first - 28}>
            swum
          </text>
        </g>
      )}
      {rows.map(({ name, method, time, range }, i) => {
        const y = first + pitch * i + 24;
        const beyond = x(range?.low ?? time) > 60; // little room to its right
        const at = x((beyond ? range?.high : range?.low) ?? time);
        return (
          <g key={method} class={i === 0 ? 'series-1' : 'series-0'}>
            <text class={beyond ? 'method-name to-here' : 'method-name'} x={`${at}%`} y={y - 12}>
              {name}
            </text>
            {range && <line x1={`${x(range.low)}%`} x2={`${x(range.high)}%`} y1={y} y2={y} />}
            <circle cx={`${x(time)}%`} cy={y} r="6" />
          </g>
        );
      })}
    </svg>
  );
}

const ends = ['from-here', 'to-here', 'here'];
