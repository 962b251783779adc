import { Board, ChoiceField, CountField, PoolField, TimeField } from '~/ui';
import { linesOf } from '~/ui/csv';
import { lengthsOption } from '~/ui/lengths-text';
import { plausibleTimes } from '~/ui/plausible';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { distanceText } from '~/ui/wording';
import { withDifference } from './drawing';
import { nextFinal } from './example';
import { addressOf, type PlanFields, shape } from './fields';
import { judgedRows } from './Judgement';
import { type PlanResult, viewOf } from './model';
import { Result } from './Result';
import { ShapeFields } from './ShapeFields';
import { SwimField } from './SwimField';

export default function Calculator(props: CalculatorProps<PlanFields>) {
  const form = useForm(props, { id: 'plan', initial: nextFinal, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, own, swum, pool, result } = view;

  return (
    <Board
      form={form}
      errors={{
        ...errors,
        own: fields.shape === 'own' ? own.errors : null,
        swum: swum.errors,
      }}
      example={nextFinal}
      cleared={{ ...fields, goal: '', gap: '', credit: '', lift: '', own: '', swum: '' }}
      awaited="The plan appears"
      answer={
        result && (
          <Result
            result={result}
            onDifference={(difference) =>
              form.replace(withDifference(form.fields.value, difference))
            }
          />
        )
      }
      href={addressOf(fields)}
      csv={result && csvOf(result)}
    >
      <PoolField form={form} error={errors.length} />
      <div class="row pair">
        <CountField
          {...form.field('distance')}
          label={`Race distance, ${pool?.unit ?? 'm'}`}
          error={errors.distance}
        />
        <TimeField
          {...form.field('goal')}
          label="Goal time"
          within={plausibleTimes(view.distance ?? 100)}
          error={errors.goal}
        />
      </div>
      <ShapeFields form={form} view={view} />
      <ChoiceField
        {...form.field('every')}
        label="One row of the card for every"
        as="list"
        options={view.strides.map((lengths) => lengthsOption(lengths, pool))}
        value={String(view.stride)}
      />
      <SwimField
        form={form}
        name="swum"
        label="After the race: the splits that were swum"
        hint="Type or paste them to lay them beside the plan; till then, leave it empty."
        text={swum}
        pool={pool}
      />
    </Board>
  );
}

function csvOf({ plan, card, judged }: PlanResult) {
  const { unit } = plan.pool;
  return {
    name: 'race-plan',
    rows: [
      [`Distance (${unit})`, 'Lap', 'Watch'],
      ...card.rows.map(({ distance, text }) => [distanceText(distance), text.lap, text.time]),
      ...(judged ? [[], ...linesOf(judgedRows(judged, unit))] : []),
    ],
  };
}
