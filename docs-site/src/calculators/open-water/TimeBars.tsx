import type { Hundredths } from 'backhalf';
import { clock, type NamedRow } from './rows';

interface Props {
  readonly rows: readonly NamedRow[];
  /** The finish in still water at the same effort. */
  readonly still: Hundredths;
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

const height = 44;

/** Time spent on each leg, against the same effort in still water. The table holds the same figures. */
export function TimeBars({ rows, still, finding }: Props) {
  const finish = rows.at(-1)?.elapsed ?? still;
  const longest = Math.max(finish, still);
  const share = (time: number) => `${(100 * time) / longest}%`;
  let start = 0;
  const bars = rows.map((row) => {
    const bar = { ...row, from: start, time: row.elapsed - start };
    start = row.elapsed;
    return bar;
  });
  return (
    <svg class="time-bars" role="img" aria-label={finding} width="100%" height={2 * height + 40}>
      <text class="axis-name" x="0" y="16">
        This water: {clock(finish)}
      </text>
      {bars.map(({ name, water, from, time, shown }) => (
        <g key={name} class={water}>
          <rect x={share(from)} y="24" width={share(time)} height={height} />
          {time > longest * 0.22 && (
            <text x={share(from + time / 2)} y={24 + height / 2 + 5}>
              {clock(shown)} {water === 'still' ? '' : water}
            </text>
          )}
        </g>
      ))}
      <text class="axis-name" x="0" y={24 + height + 26}>
        Still water: {clock(still)}
      </text>
      <rect class="still" x="0" y={24 + height + 34} width={share(still)} height={height / 2} />
    </svg>
  );
}
