import { formatTime } from 'backhalf';
import { Board, CountField, PoolField, RepsFields } from '~/ui';
import { linesOf } from '~/ui/csv';
import { repRows } from '~/ui/rep-rows';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { tuesday } from './example';
import { addressOf, type SetFields, type SetResult, shape, viewOf } from './model';
import { Result } from './Result';

export default function Calculator(props: CalculatorProps<SetFields>) {
  const form = useForm(props, { id: 'set', initial: tuesday, shape });
  const fields = form.fields.value;
  const { errors, pool, reps, result } = viewOf(fields);
  const unit = pool?.unit ?? 'm';

  return (
    <Board
      form={form}
      errors={errors}
      example={tuesday}
      cleared={{ ...fields, reps: '' }}
      awaited="The pace appears"
      answer={result && <Result result={result} />}
      href={addressOf(fields)}
      csv={result && csvOf(result)}
    >
      <PoolField form={form} error={errors.length} />
      <div class="row">
        <CountField
          {...form.field('distance')}
          label={`Rep distance, ${unit}`}
          error={errors.distance}
        />
        <CountField {...form.field('race')} label={`Race distance, ${unit}`} error={errors.race} />
      </div>
      <RepsFields
        form={form}
        list="reps"
        what="rep"
        example="31.5 33.5"
        reading={reps}
        errors={{ list: errors.reps, rest: errors.rest }}
        lines={6}
      />
    </Board>
  );
}

function csvOf({ reading, race, raceDistance }: SetResult) {
  const { columns, rows, total } = repRows(reading);
  const estimate =
    race === null
      ? []
      : [
          [],
          [`Race of ${raceDistance}`, formatTime(race.time)],
          ['Whole reps promise', formatTime(race.wholeReps)],
        ];
  return { name: 'set', rows: [...linesOf({ columns, rows: [...rows, total] }), ...estimate] };
}
