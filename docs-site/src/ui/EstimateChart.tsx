import { type Estimate, formatTime, type Hundredths } from 'backhalf';

interface Props {
  readonly rows: readonly { readonly name: string; readonly estimate: Estimate }[];
  /** A time to hold them against, such as a goal. */
  readonly mark: { readonly name: string; readonly time: Hundredths } | null;
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

const left = 2; // per cent of the width, so that it fits any; heights are pixels
const right = 98;
const first = 56;
const pitch = 54;
const steps = [50, 100, 200, 500, 1000, 2000, 3000, 6000, 12_000, 30_000, 60_000, 360_000];
const mostTicks = 6;

/** Each estimate as a bar over its range, on one line of time, faster to the left. The table holds the same. */
export function EstimateChart({ rows, mark, finding }: Props) {
  const ends = rows.flatMap(({ estimate: { time, range } }) =>
    range ? [range.low, time, range.high] : [time],
  );
  const all = mark === null ? ends : [...ends, mark.time];
  const [fastest, slowest] = [Math.min(...all), Math.max(...all)];
  const room = slowest - fastest;
  const step = steps.find((size) => size * (mostTicks - 1) >= room + size) ?? Math.ceil(room / 4);
  const from = Math.floor(fastest / step);
  const to = Math.max(Math.ceil(slowest / step), from + 1);
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => ((from + i) * step) as Hundredths);
  const place = (time: number) => left + ((right - left) * (time / step - from)) / (to - from);
  const x = (time: number) => `${place(time)}%`;
  const side = (time: number) => (place(time) > 55 ? 'to-here' : 'from-here');
  const foot = first + pitch * rows.length + 8;

  return (
    <svg
      class="split-chart estimates"
      role="img"
      aria-label={finding}
      width="100%"
      height={foot + 30}
    >
      <text class="axis-name" x="0" y="14">
        ← faster
      </text>
      {ticks.map((tick, i) => (
        <g key={tick} class="tick">
          <line x1={x(tick)} x2={x(tick)} y1={first - 8} y2={foot} />
          <text
            class={i === 0 ? 'from-here' : i === ticks.length - 1 ? 'to-here' : 'here'}
            x={x(tick)}
            y={foot + 20}
          >
            {formatTime(tick, { decimals: 0 })}
          </text>
        </g>
      ))}
      {mark && (
        <g class="mark">
          <line x1={x(mark.time)} x2={x(mark.time)} y1={first - 14} y2={foot} />
          <text class={side(mark.time)} x={x(mark.time)} y={first - 22}>
            {mark.name} {formatTime(mark.time)}
          </text>
        </g>
      )}
      {rows.map(({ name, estimate: { time, range } }, i) => {
        const y = first + pitch * i + 18;
        const [low, high] = [range?.low ?? time, range?.high ?? time];
        const beyond = side(low) === 'to-here';
        return (
          <g key={name} class="estimate">
            {range && (
              <rect x={x(low)} width={`${place(high) - place(low)}%`} y={y + 6} height="16" />
            )}
            <line x1={x(time)} x2={x(time)} y1={y} y2={y + 28} />
            <text
              class={`name ${beyond ? 'to-here' : 'from-here'}`}
              x={x(beyond ? high : low)}
              y={y - 4}
            >
              {name} {formatTime(time)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
