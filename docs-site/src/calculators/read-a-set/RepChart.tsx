import { formatTime, type Hundredths, type SetReading } from 'backhalf';

const top = 40;
const bottom = 220;
const left = 13; // per cent of the width, so that it fits any; heights are pixels
const right = 97;

/** First and second halves rep by rep, faster higher. The table beside it holds the same figures. */
export function RepChart({ reading }: { readonly reading: SetReading }) {
  const halves = reading.reps.flatMap(({ halves: cut }, i) =>
    cut ? [{ rep: i + 1, ...cut }] : [],
  );
  if (halves.length < 2 || reading.halves === null) return null;
  const all = halves.flatMap(({ first, second }) => [first, second]);
  const [fastest, slowest] = [Math.min(...all), Math.max(...all)];
  const step =
    [10, 20, 50, 100, 200, 500, 1000].find((size) => size * 6 >= slowest - fastest) ?? 5000;
  const [from, to] = [
    Math.floor(fastest / step),
    Math.max(Math.ceil(slowest / step), Math.floor(fastest / step) + 1),
  ];
  const x = (rep: number) => left + ((right - left) * (rep - 0.5)) / reading.reps.length;
  const y = (time: number) => top + ((bottom - top) * (time / step - from)) / (to - from);
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => ((from + i) * step) as Hundredths);
  const finding = `First halves near ${formatTime(reading.halves.first)}, second halves near ${formatTime(reading.halves.second)}, over ${reading.reps.length} reps.`;
  // The names stand clear of the last points, over which they are written.
  const last = halves.slice(-Math.ceil(halves.length / 3));
  const series = (pick: 'first' | 'second') =>
    halves.map((cut) => ({ x: x(cut.rep), y: y(cut[pick]) }));

  return (
    <svg class="split-chart" role="img" aria-label={finding} width="100%" height={bottom + 46}>
      <text class="axis-name" x="0" y="16">
        faster ↑ time of a half
      </text>
      {ticks.map((tick) => (
        <g key={tick} class="tick">
          <line x1={`${left}%`} x2={`${right}%`} y1={y(tick)} y2={y(tick)} />
          <text x={`${left - 1.5}%`} y={y(tick) + 4}>
            {formatTime(tick, { decimals: 1 })}
          </text>
        </g>
      ))}
      <Series points={series('first')} number={0} />
      <Series points={series('second')} number={1} />
      <text
        class="end name-0"
        x={`${right}%`}
        y={y(Math.min(...last.map(({ first }) => first))) - 12}
      >
        first halves
      </text>
      <text
        class="end name-1"
        x={`${right}%`}
        y={y(Math.max(...last.map(({ second }) => second))) + 22}
      >
        second halves
      </text>
      <text class="foot" x={`${left}%`} y={bottom + 38}>
        rep 1
      </text>
      <text class="foot end" x={`${right}%`} y={bottom + 38}>
        rep {reading.reps.length}
      </text>
    </svg>
  );
}

interface SeriesProps {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly number: number;
}

const Series = ({ points, number }: SeriesProps) => (
  <g class={`series-${number}`}>
    {points.slice(1).map((point, i) => {
      const start = points[i] ?? point;
      return <line key={point.x} x1={`${start.x}%`} y1={start.y} x2={`${point.x}%`} y2={point.y} />;
    })}
    {points.map((point) => (
      <circle key={point.x} cx={`${point.x}%`} cy={point.y} r="4.5" />
    ))}
  </g>
);
