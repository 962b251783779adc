import { formatTime } from 'backhalf';
import { Board, CountField, MethodNotes, PoolField, RepsFields } from '~/ui';
import { linesOf } from '~/ui/csv';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { brokenFour } from './example';
import { notesOf } from './methods';
import { addressOf, type BrokenFields, type BrokenResult, shape, viewOf } from './model';
import { methodRows, Result } from './Result';

export default function Calculator(props: CalculatorProps<BrokenFields>) {
  const form = useForm(props, { id: 'broken', initial: brokenFour, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, result } = view;
  const unit = view.pool?.unit ?? 'm';

  return (
    <Board
      class="broken-swim"
      form={form}
      errors={errors}
      example={brokenFour}
      cleared={{ ...fields, pieces: '', race: '', rest: '', reserve: '', tau: '' }}
      awaited="The times appear"
      answer={result && <Result result={result} />}
      below={result && <MethodNotes notes={notesOf(result.methods)} />}
      href={addressOf(fields)}
      csv={result && csvOf(result)}
    >
      <PoolField form={form} error={errors.length} />
      <div class="row pair">
        <CountField
          {...form.field('distance')}
          label={`Piece distance, ${unit}`}
          error={errors.distance}
        />
        <CountField
          {...form.field('race')}
          label={`Race distance, ${unit}`}
          hint="All pieces, if empty."
          error={errors.race}
        />
      </div>
      <RepsFields
        form={form}
        list="pieces"
        what="piece"
        example="30.5 31.5"
        reading={view.pieces}
        errors={{ list: errors.pieces, rest: errors.rest }}
        lines={4}
      />
      <fieldset class="field">
        <legend>The swimmer’s reserve, if it is known</legend>
        <p class="hint">
          From trials of this swimmer’s own. The time constant is for the integral form alone.
        </p>
        <div class="row pair">
          <CountField {...form.field('reserve')} label="Reserve, m" error={errors.reserve} />
          <CountField {...form.field('tau')} label="Time constant, s" error={errors.tau} />
        </div>
      </fieldset>
    </Board>
  );
}

function csvOf({ methods, race, set }: BrokenResult) {
  return {
    name: 'broken-swim',
    rows: [
      ...linesOf(methodRows(methods, race.distance, set.pool.unit)),
      [],
      ['Swum without rests', formatTime(race.swum)],
    ],
  };
}
