import { useSignal } from '@preact/signals';
import type { PlanJudgement, RacePlan } from 'backhalf';
import { distanceText, signedPercent } from '~/ui/wording';
import { type Scale, type Step, scaleOf, stepsOf } from './chart-scale';
import { Handle } from './Handle';

interface Props {
  readonly plan: RacePlan;
  /** The swim beside it, where there is one. */
  readonly judged: PlanJudgement | null;
  /** What the picture shows, in one sentence. */
  readonly finding: string;
  /** Takes the difference of the halves as drawn, in hundredths; none where it cannot be drawn. */
  readonly onDifference: ((difference: number) => void) | null;
}

const top = 52;
const bottom = 252;
const left = 13; // per cent of the width, so that it fits any; heights are pixels
const right = 97;

/** Laps as steps against the goal's mean pace, faster higher. The card holds the same figures. */
export function PlanChart({ plan, judged, finding, onDifference }: Props) {
  const held = useSignal<Scale | null>(null); // while it is dragged, the scale stays
  const planned = stepsOf(plan.marks, plan);
  const swum = judged
    ? stepsOf(
        judged.rows.map((row) => ({ distance: row.distance, time: row.swum })),
        plan,
      )
    : [];
  const scale = held.value ?? scaleOf([...planned, ...swum]);
  const x = (distance: number) => left + ((right - left) * distance) / plan.distance;
  const y = (off: number) => (top + bottom) / 2 + ((bottom - top) / 2) * (off / scale.limit);
  const middle = x(plan.distance / 2);
  const gripped = planned.find(({ to }) => to >= plan.distance * 0.75);

  return (
    <div class="plan-chart">
      <svg class="split-chart" role="img" aria-label={finding} width="100%" height={bottom + 46}>
        <text class="axis-name" x="0" y="16">
          faster ↑ % off the mean pace of the goal
        </text>
        {swum.length > 0 && (
          <text x="0" y="34">
            solid: planned, dashed: swum
          </text>
        )}
        {scale.ticks.map((tick) => (
          <g key={tick} class={Math.abs(tick) < 1e-9 ? 'tick mean' : 'tick'}>
            <line x1={`${left}%`} x2={`${right}%`} y1={y(tick)} y2={y(tick)} />
            <text x={`${left - 1.5}%`} y={y(tick) + 4}>
              {signedPercent(tick)}
            </text>
          </g>
        ))}
        {plan.halves && (
          <>
            <line class="halfway" x1={`${middle}%`} x2={`${middle}%`} y1={top} y2={bottom} />
            <text class="part" x={`${(left + middle) / 2}%`} y={bottom + 20}>
              first half
            </text>
            <text class="part" x={`${(middle + right) / 2}%`} y={bottom + 20}>
              second half
            </text>
          </>
        )}
        <Steps steps={planned} middle={plan.distance / 2} x={x} y={y} />
        {swum.length > 0 && <Swum steps={swum} x={x} y={y} />}
        <text class="foot" x={`${left}%`} y={bottom + 38}>
          0 {plan.pool.unit}
        </text>
        <text class="foot end" x={`${right}%`} y={bottom + 38}>
          {distanceText(plan.distance)} {plan.pool.unit}
        </text>
      </svg>
      {onDifference && plan.difference !== null && gripped && (
        <Handle
          goal={plan.goal}
          difference={plan.difference}
          limit={scale.limit}
          pixels={(bottom - top) / 2}
          x={x((gripped.from + gripped.to) / 2)}
          y={y(gripped.off)}
          onDifference={onDifference}
          onHold={(holds) => {
            held.value = holds ? scale : null;
          }}
        />
      )}
    </div>
  );
}

interface LineProps {
  readonly steps: readonly Step[];
  readonly x: (distance: number) => number;
  readonly y: (off: number) => number;
}

/** Each lap level, and from lap to lap straight up or down. */
const Steps = ({ steps, middle, x, y }: LineProps & { readonly middle: number }) => (
  <g class="planned">
    {steps.map(({ from, to, off }, i) => {
      const before = steps[i - 1];
      return (
        <g key={from} class={from < middle ? 'front' : 'back'}>
          {before && <line x1={`${x(from)}%`} x2={`${x(from)}%`} y1={y(before.off)} y2={y(off)} />}
          <line x1={`${x(from)}%`} x2={`${x(to)}%`} y1={y(off)} y2={y(off)} />
        </g>
      );
    })}
  </g>
);

/** The swim: dashed from lap to lap, with open marks, so that colour is not needed. */
const Swum = ({ steps, x, y }: LineProps) => {
  const points = steps.map(({ from, to, off }) => ({ at: x((from + to) / 2), y: y(off) }));
  return (
    <g class="series-0">
      {points.slice(1).map((point, i) => {
        const from = points[i] ?? point;
        return (
          <line key={point.at} x1={`${from.at}%`} y1={from.y} x2={`${point.at}%`} y2={point.y} />
        );
      })}
      {points.length <= 24 &&
        points.map((point) => <circle key={point.at} cx={`${point.at}%`} cy={point.y} r="4.5" />)}
    </g>
  );
};
