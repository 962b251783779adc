import { pacingProfile, type Splits } from 'backhalf';
import { distanceText, signedPercent } from './wording';

interface Props {
  /** Swims over the same distance, three laps or more, laps of one length. */
  readonly swims: readonly Splits[];
  readonly names: readonly string[];
  readonly unit: 'm' | 'yd';
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

const top = 40;
const bottom = 220;
const left = 13; // per cent of the width, so that it fits any; heights are pixels
const right = 97;
const steps = [0.0025, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10];

/** Laps against their own mean, faster higher. The table beside it holds the same figures. */
export function SplitChart({ swims, names, unit, finding }: Props) {
  const profiles = swims.map((swim) => pacingProfile(swim).againstMean);
  const fastest = Math.min(...profiles.flat(), 0);
  const slowest = Math.max(...profiles.flat(), 0);
  const step = steps.find((size) => size * 5 >= slowest - fastest) ?? slowest - fastest;
  const [from, to] = [Math.floor(fastest / step), Math.max(Math.ceil(slowest / step), 1)];
  const length = Math.max(...swims.map((swim) => swim.marks.at(-1)?.distance ?? 0));

  const x = (distance: number) => left + ((right - left) * distance) / length;
  const y = (ratio: number) => top + ((bottom - top) * (ratio / step - from)) / (to - from);
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => (from + i) * step);
  const lines = swims.map((swim, s) =>
    swim.marks.map((mark, i) => ({ x: x(mark.distance), y: y(profiles[s]?.[i] ?? 0) })),
  );

  return (
    <svg class="split-chart" role="img" aria-label={finding} width="100%" height={bottom + 46}>
      <text class="axis-name" x="0" y="16">
        faster ↑ % off the mean lap
      </text>
      {ticks.map((tick) => (
        <g key={tick} class={Math.abs(tick) < step / 2 ? 'tick mean' : 'tick'}>
          <line x1={`${left}%`} x2={`${right}%`} y1={y(tick)} y2={y(tick)} />
          <text x={`${left - 1.5}%`} y={y(tick) + 4}>
            {signedPercent(tick)}
          </text>
        </g>
      ))}
      {lines.length === 1 ? (
        <Halved line={lines[0] ?? []} middle={x(length / 2)} />
      ) : (
        lines.map((line, i) => <Line key={names[i]} line={line} series={i} />)
      )}
      {lines.length > 1 && <EndNames lines={lines} names={names} />}
      <text class="foot" x={`${left}%`} y={bottom + 38}>
        0 {unit}
      </text>
      <text class="foot end" x={`${right}%`} y={bottom + 38}>
        {distanceText(length)} {unit}
      </text>
    </svg>
  );
}

/** One swim: its second half in the signal colour, thicker, with filled marks. */
function Halved({ line, middle }: { readonly line: readonly Point[]; readonly middle: number }) {
  const cut = line.findLastIndex((point) => point.x <= middle + 1e-6);
  return (
    <>
      <line class="halfway" x1={`${middle}%`} x2={`${middle}%`} y1={top - 8} y2={bottom + 8} />
      <text class="part" x={`${(left + middle) / 2}%`} y={bottom + 20}>
        first half
      </text>
      <text class="part" x={`${(middle + right) / 2}%`} y={bottom + 20}>
        second half
      </text>
      <Line line={line.slice(0, cut + 1)} series={0} />
      <Line line={line.slice(Math.max(cut, 0))} series={1} skipFirst={cut >= 0} />
    </>
  );
}

interface LineProps {
  readonly line: readonly Point[];
  readonly series: number;
  readonly skipFirst?: boolean;
}

/** Straight from lap to lap, for nothing is known between; told apart by dash and mark too. */
function Line({ line, series, skipFirst = false }: LineProps) {
  const marked = line.length > 24 ? [] : line.slice(skipFirst ? 1 : 0);
  return (
    <g class={`series-${series}`}>
      {line.slice(1).map((point, i) => {
        const from = line[i] ?? point;
        return <line key={point.x} x1={`${from.x}%`} y1={from.y} x2={`${point.x}%`} y2={point.y} />;
      })}
      {marked.map((point) => (
        <circle key={point.x} cx={`${point.x}%`} cy={point.y} r="4.5" />
      ))}
    </g>
  );
}

/** Each name at the end of its line, above the upper one and below the lower. */
function EndNames({
  lines,
  names,
}: {
  readonly lines: readonly (readonly Point[])[];
  readonly names: readonly string[];
}) {
  const ends = lines.map((line) => line.at(-1)?.y ?? 0);
  const upper = Math.min(...ends);
  return (
    <>
      {names.map((name, i) => {
        const end = ends[i] ?? 0;
        const above = end === upper && ends.indexOf(end) === i;
        return (
          <text key={name} class={`end name-${i}`} x={`${right}%`} y={above ? end - 12 : end + 24}>
            {name}
          </text>
        );
      })}
    </>
  );
}
