import { formatTime } from 'backhalf';
import {
  AddRep,
  AddressNotice,
  ChoiceField,
  CountField,
  FormActions,
  MethodNotes,
  PoolField,
  type Problem,
  RestField,
  ResultCard,
  ShareBar,
  TimesField,
} from '~/ui';
import { useForm } from '~/ui/use-form';
import { brokenFour } from './example';
import { notesOf } from './methods';
import {
  addressOf,
  type BrokenFields,
  type BrokenResult,
  type BrokenView,
  shape,
  viewOf,
} from './model';
import { methodRows, Result } from './Result';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: BrokenFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({
  initial = brokenFour,
  id = 'broken',
  ownPage = false,
}: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, result } = view;
  const problems = problemsOf(view, id);
  const unit = view.pool?.unit ?? 'm';
  const distance = Number(fields.distance) || 100;
  const count = (
    name: keyof BrokenFields & string,
    label: string,
    error: string | null,
    hint?: string,
  ) => (
    <CountField
      id={`${id}-${name}`}
      name={name}
      label={label}
      {...(hint !== undefined && { hint })}
      value={fields[name] ?? ''}
      onValue={(text) => form.set(name, text)}
      error={error}
    />
  );

  return (
    <div class={`calculator broken-swim not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={errors.pool} />
          <div class="row pair">
            {count('distance', `Piece distance, ${unit}`, errors.distance)}
            {count('race', `Race distance, ${unit}`, errors.race, 'All pieces, if empty.')}
          </div>
          <ChoiceField
            id={`${id}-kind`}
            name="kind"
            label="The times of a piece are"
            options={kinds}
            value={fields.kind}
            onValue={(text) => form.set('kind', text)}
          />
          <AddRep
            id={id}
            running={fields.kind === 'running'}
            distance={distance}
            what="piece"
            onRep={(line) => form.set('pieces', `${fields.pieces.trimEnd()}\n${line}`.trimStart())}
          />
          <TimesField
            id={`${id}-pieces`}
            name="pieces"
            label="Pieces, one a line"
            hint="Type or paste: 30.5 31.5, with blanks, tabs or semicolons between."
            what="time"
            value={fields.pieces}
            onValue={(text) => form.set('pieces', text)}
            reading={view.pieces.text}
            errors={errors.pieces}
            lines={4}
          />
          <RestField
            id={id}
            fields={fields}
            onValue={form.set}
            error={errors.rest}
            distance={distance}
            reps={view.pieces.reps.length}
          />
          <fieldset class="field">
            <legend>The swimmer’s reserve, if it is known</legend>
            <p class="hint">
              From trials of this swimmer’s own. The time constant is for the integral form alone.
            </p>
            <div class="row pair">
              {count('reserve', 'Reserve, m', errors.reserve)}
              {count('tau', 'Time constant, s', errors.tau)}
            </div>
          </fieldset>
          <FormActions
            form={form}
            example={brokenFour}
            cleared={{ ...fields, pieces: '', race: '', rest: '', reserve: '', tau: '' }}
          />
        </form>
        {result ? (
          <Result result={result} />
        ) : (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      {result && <MethodNotes notes={notesOf(result.methods)} />}
      <ShareBar href={addressOf(fields)} problems={problems} csv={result && csvOf(result)} />
    </div>
  );
}

const kinds = [
  { value: 'halves', label: 'Halves, each by itself' },
  { value: 'running', label: 'The watch at halfway and at the wall' },
];

const waitingFor = (problems: readonly Problem[]): string =>
  `The times appear once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function problemsOf({ errors, pool }: BrokenView, id: string): readonly Problem[] {
  const one = (name: string, message: string | null) =>
    message === null ? [] : [{ id: `${id}-${name}`, message }];
  return [
    ...one('length', pool === null ? errors.pool : null),
    ...one('distance', errors.distance),
    ...one('race', errors.race),
    ...errors.pieces.map((message) => ({ id: `${id}-pieces`, message })),
    ...one('rest', errors.rest),
    ...one('reserve', errors.reserve),
    ...one('tau', errors.tau),
  ];
}

function csvOf({ methods, race, set }: BrokenResult) {
  const { columns, rows } = methodRows(methods, race.distance, set.pool.unit);
  return {
    name: 'broken-swim',
    rows: [
      columns,
      ...rows.map(({ head, cells }) => [head, ...cells]),
      [],
      ['Swum without rests', formatTime(race.swum)],
    ],
  };
}
