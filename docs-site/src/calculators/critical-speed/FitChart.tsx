import { convertDistance, formatTime, type Hundredths } from 'backhalf';
import { distanceText } from '~/ui/wording';
import { bandOf } from './band';
import type { CriticalResult } from './model';

const top = 34;
const bottom = 300;
const left = 11; // per cent of the width, so that it fits any; heights are pixels
const right = 97;
const minutes = [0.5, 1, 2, 5, 10, 20, 60, 120, 300, 600, 1200, 6000];
const distances = [25, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000];
const mostTicks = 6;

/** Distance against time: the trials, the line through them, and how far it can be trusted. */
export function FitChart({ result }: { readonly result: CriticalResult }) {
  const { model, swims, races, unit, sentence } = result;
  const estimates = races.flatMap(({ distance, settles }) =>
    typeof settles === 'string' ? [] : [{ distance, time: settles.time }],
  );
  const inUnit = (metres: number) => convertDistance(metres, 'm', unit);
  const furthest = Math.max(...[...swims, ...estimates].map(({ distance }) => distance));
  const end = convertDistance(furthest, unit, 'm');
  const band = bandOf(model, end);
  const last = Math.max(
    ...[...swims, ...estimates].map(({ time }) => time),
    band.at(-1)?.high ?? 0,
  );
  const across = ticksTo(
    last,
    minutes.map((count) => count * 6000),
  );
  const up = ticksTo(furthest, distances);
  const share = (time: number) => time / (across.at(-1) ?? 1);
  const height = (distance: number) => distance / (up.at(-1) ?? 1);
  const x = (time: number) => `${left + (right - left) * share(time)}%`;
  const y = (distance: number) => bottom - (bottom - top) * height(distance);
  const onPaper = (time: number, metres: number) =>
    `${100 * share(time)},${100 - 100 * height(inUnit(metres))}`;
  const edge = (side: 'low' | 'high') => band.map((point) => onPaper(point[side], point.metres));
  const timeAt = (metres: number) => (100 * (metres - model.reserve)) / model.speed;

  return (
    <svg class="split-chart fit" role="img" aria-label={sentence} width="100%" height={bottom + 60}>
      <text class="axis-name" x="0" y="14">
        ↑ distance, {unit}
      </text>
      {up.map((tick) => (
        <g key={tick} class="tick">
          <line x1={`${left}%`} x2={`${right}%`} y1={y(tick)} y2={y(tick)} />
          <text x={`${left - 1.5}%`} y={y(tick) + 4}>
            {tick}
          </text>
        </g>
      ))}
      {across.map((tick, i) => (
        <text
          key={tick}
          class={i === across.length - 1 ? 'end' : 'along'}
          x={x(tick)}
          y={bottom + 20}
        >
          {formatTime(tick as Hundredths, { decimals: 0 })}
        </text>
      ))}
      <text class="axis-name end" x={`${right}%`} y={bottom + 42}>
        time →
      </text>
      <svg
        x={`${left}%`}
        y={top}
        width={`${right - left}%`}
        height={bottom - top}
        viewBox="0 0 100 100"
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {band.length > 0 && (
          <g class="band">
            <polygon points={[...edge('low'), ...edge('high').reverse()].join(' ')} />
            <polyline points={edge('low').join(' ')} />
            <polyline points={edge('high').join(' ')} />
          </g>
        )}
        <polyline
          class="line"
          points={[onPaper(0, model.reserve), onPaper(timeAt(end), end)].join(' ')}
        />
      </svg>
      <g class="series-0">
        {estimates.map(({ distance, time }) => (
          <circle key={distance} cx={x(time)} cy={y(distance)} r="5" />
        ))}
      </g>
      <g class="series-1">
        {swims.map(({ distance, time }) => (
          <circle key={distance} cx={x(time)} cy={y(distance)} r="6" />
        ))}
      </g>
      {swims.map(({ distance, time }) => (
        <text key={distance} class="swim-name" x={x(time)} y={y(distance) + 24}>
          {distanceText(distance)}
        </text>
      ))}
      <text class="foot" x="0" y={bottom + 42}>
        ● swum ○ estimated{band.length > 0 && ' ╌╌ 95 % interval'}
      </text>
    </svg>
  );
}

/** Round steps from nothing to beyond the greatest value. */
function ticksTo(greatest: number, steps: readonly number[]): readonly number[] {
  const step = steps.find((size) => size * (mostTicks - 1) >= greatest) ?? greatest;
  return Array.from({ length: Math.ceil(greatest / step) + 1 }, (_, i) => i * step);
}
