interface Props {
  /** What the picture shows, in one sentence. */
  readonly finding: string;
  readonly rows: readonly { readonly name: string; readonly values: readonly number[] }[];
  /** One name for each value of a row; the first is drawn open, the second filled. */
  readonly series: readonly string[];
  /** The axis: what it counts, its ends, and how a value is written. */
  readonly axis: string;
  readonly from: number;
  readonly to: number;
  readonly write: (value: number) => string;
}

const row = 56; // a name and the dots under it; heights are pixels
const left = 6; // per cent of the width
const right = 94;

/** Values as dots on one axis, a row each. The table beside it holds the same figures. */
export function DotChart({ finding, rows, series, axis, from, to, write }: Props) {
  const x = (value: number) => left + ((right - left) * (value - from)) / (to - from);
  const bottom = 44 + rows.length * row;
  return (
    <svg
      class="split-chart dot-chart"
      role="img"
      aria-label={finding}
      width="100%"
      height={bottom + 44}
    >
      <text class="axis-name" x="0" y="16">
        {axis}
      </text>
      {[from, (from + to) / 2, to].map((tick) => (
        <g key={tick} class="tick">
          <line x1={`${x(tick)}%`} x2={`${x(tick)}%`} y1="28" y2={bottom} />
          <text x={`${x(tick)}%`} y={bottom + 18}>
            {write(tick)}
          </text>
        </g>
      ))}
      {rows.map(({ name, values }, i) => {
        const y = 44 + i * row + 34;
        return (
          <g key={name}>
            <text class="row-name" x="0" y={y - 16}>
              {name}
            </text>
            {values.map((value, s) => (
              <g key={series[s]} class={`series-${s}`}>
                <circle cx={`${x(value)}%`} cy={y} r="6" />
              </g>
            ))}
          </g>
        );
      })}
      {series.length > 1 && (
        <text class="foot" x={`${left}%`} y={bottom + 38}>
          ○ {series[0]} ● {series[1]}
        </text>
      )}
    </svg>
  );
}
