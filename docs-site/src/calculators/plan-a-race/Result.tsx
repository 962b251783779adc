import { formatTime, pacePer } from 'backhalf';
import { type Figured, ResultCard } from '~/ui';
import { distanceText, slowerOrFaster } from '~/ui/wording';
import { nudgeOf } from './drawing';
import { Judgement } from './Judgement';
import type { PlanResult } from './model';
import { Nudges } from './Nudges';
import { PaceCardSheet } from './PaceCardSheet';
import { PlanChart } from './PlanChart';

interface Props {
  readonly result: PlanResult;
  /** Takes the difference of the halves as drawn, in hundredths. */
  readonly onDifference: (difference: number) => void;
}

/** The plan: halfway first, then the chart to draw on, the card, and the swim that followed. */
export function Result({ result, onDifference }: Props) {
  const { plan, card, judged, drawn, sentence, cautions } = result;
  const { unit } = plan.pool;
  return (
    <ResultCard
      headline={headlineOf(result)}
      beside={besideOf(result)}
      cautions={cautions}
      sentence={sentence}
    >
      <PlanChart
        plan={plan}
        judged={judged}
        finding={sentence}
        onDifference={drawn ? onDifference : null}
      />
      {drawn && plan.difference !== null ? (
        <Nudges
          difference={plan.difference}
          step={nudgeOf(plan.goal)}
          onDifference={onDifference}
        />
      ) : (
        <p class="said no-print">
          This shape is as it was swum; an even or halved one can be drawn.
        </p>
      )}
      <PaceCardSheet card={card} unit={unit} />
      {judged && <Judgement judged={judged} unit={unit} />}
    </ResultCard>
  );
}

function headlineOf({ plan, card }: PlanResult): Figured {
  const { halfway } = card;
  if (halfway === null || plan.difference === null) {
    return { label: 'At the wall the watch must show', figure: formatTime(plan.goal) };
  }
  const at = `${distanceText(halfway.distance)} ${plan.pool.unit}`;
  return {
    label: `At halfway, ${at}, the watch must show`,
    figure: halfway.text,
    note: halfway.interpolated
      ? 'between two walls: nobody can touch and look there'
      : `second half ${slowerOrFaster(plan.difference)}`,
  };
}

/** The other marks worth remembering, and the pace. */
function besideOf({ plan, card }: PlanResult): readonly Figured[] {
  const { unit } = plan.pool;
  const half = card.halfway?.interpolated === false ? card.halfway.distance : null;
  const others = card.checkpoints.filter(
    ({ distance }) => distance !== half && distance !== plan.distance,
  );
  return [
    ...others.map(({ text }) => ({ label: `At ${text.distance}`, figure: text.time })),
    ...(plan.halves === null
      ? []
      : [{ label: 'Second half', figure: formatTime(plan.halves.second) }]),
    {
      label: `Mean pace per 100 ${unit}`,
      figure: formatTime(pacePer(plan.goal, plan.distance)),
    },
  ];
}
