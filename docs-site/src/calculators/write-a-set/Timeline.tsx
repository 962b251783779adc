import { formatTime, type Hundredths } from 'backhalf';
import type { Bar } from './model';

interface Props {
  readonly bars: readonly Bar[];
  /** When it all ends, in hundredths of a second. */
  readonly end: Hundredths;
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

const minute = 6000;
const steps = [1 / 12, 1 / 4, 1, 5, 10, 15, 30, 60, 120].map((minutes) => minutes * minute);
const height = 48;

/** Swims as bars and rest as the gaps between them. The table holds the same figures. */
export function Timeline({ bars, end, finding }: Props) {
  const share = (time: number) => `${(100 * time) / end}%`;
  const step = steps.find((size) => end / size <= 6) ?? Math.ceil(end / 6);
  const ticks = Array.from({ length: Math.floor(end / step) + 1 }, (_, i) => i * step);
  return (
    <svg class="timeline" role="img" aria-label={finding} width="100%" height={height + 48}>
      <text class="axis-name" x="0" y="14">
        swims, and rest between them
      </text>
      {bars.map(({ from, to }, i) => (
        <rect key={i} x={share(from)} y="24" width={share(to - from)} height={height - 8} />
      ))}
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={share(tick)} x2={share(tick)} y1={height + 16} y2={height + 24} />
          {tick < 0.94 * end && (
            <text class={tick === 0 ? '' : 'mid'} x={share(tick)} y={height + 40}>
              {formatTime(tick as Hundredths, { decimals: 0 })}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
