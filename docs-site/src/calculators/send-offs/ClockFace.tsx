import type { ClockMark } from './lane';

interface Props {
  readonly marks: readonly ClockMark[];
  /** What the picture shows, in one sentence. */
  readonly finding: string;
}

const middle = 170;
const rim = 118;
const listed = 3;

/** A point beside the rim; the hand starts at the top and goes round in sixty seconds. */
const at = (time: number, radius: number) => {
  const turn = (2 * Math.PI * time) / 6000;
  const round = (value: number) => Math.round(value * 10) / 10;
  return {
    x: round(middle + radius * Math.sin(turn)),
    y: round(middle - radius * Math.cos(turn)),
  };
};

/** A pace clock, and on its rim where the first swimmer leaves, numbered. The table says the same. */
export const ClockFace = ({ marks, finding }: Props) => (
  <svg class="clock-face" role="img" aria-label={finding} viewBox="0 0 340 340">
    <circle class="rim" cx={middle} cy={middle} r={rim} />
    {Array.from({ length: 12 }, (_, i) => {
      const [from, to, number] = [rim, rim - 10, rim - 26].map((r) => at(i * 500, r));
      return (
        <g key={i} class="five">
          <line x1={from?.x} y1={from?.y} x2={to?.x} y2={to?.y} />
          <text x={number?.x} y={(number?.y ?? 0) + 6}>
            {i === 0 ? 60 : i * 5}
          </text>
        </g>
      );
    })}
    {marks.map(({ at: time, reps }) => {
      const [dot, label] = [at(time, rim), at(time, rim + 24)];
      return (
        <g key={time} class="mark">
          <circle cx={dot.x} cy={dot.y} r="8" />
          <text x={label.x} y={label.y + 6} class={sideOf(label.x)}>
            {reps.slice(0, listed).join(', ')}
            {reps.length > listed ? ' …' : ''}
          </text>
        </g>
      );
    })}
    <text class="name" x={middle} y={middle - 4}>
      numbers outside:
    </text>
    <text class="name" x={middle} y={middle + 16}>
      the rep that leaves
    </text>
  </svg>
);

const sideOf = (x: number) =>
  Math.abs(x - middle) < 20 ? 'over' : x < middle ? 'before' : 'behind';
