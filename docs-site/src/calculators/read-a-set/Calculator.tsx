import { formatTime, type Hundredths } from 'backhalf';
import {
  AddRep,
  AddressNotice,
  ChoiceField,
  CountField,
  NumberTable,
  PoolField,
  type Problem,
  RestField,
  ResultCard,
  ShareBar,
  TimesField,
} from '~/ui';
import { repRows } from '~/ui/rep-rows';
import { useForm } from '~/ui/use-form';
import { tuesday } from './example';
import { addressOf, type SetFields, type SetResult, type SetView, shape, viewOf } from './model';
import { RepChart } from './RepChart';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: SetFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = tuesday, id = 'set', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const problems = problemsOf(view, id);
  const distance = Number(fields.distance) || 100;

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={view.poolError} />
          <div class="row">
            <CountField
              id={`${id}-distance`}
              name="distance"
              label={`Rep distance, ${view.pool?.unit ?? 'm'}`}
              value={fields.distance}
              onValue={(text) => form.set('distance', text)}
              error={view.distanceError}
            />
            <CountField
              id={`${id}-race`}
              name="race"
              label={`Race distance, ${view.pool?.unit ?? 'm'}`}
              value={fields.race}
              onValue={(text) => form.set('race', text)}
              error={view.raceError}
            />
          </div>
          <ChoiceField
            id={`${id}-kind`}
            name="kind"
            label="The times of a rep are"
            options={kinds}
            value={fields.kind}
            onValue={(text) => form.set('kind', text)}
          />
          <AddRep
            id={id}
            running={fields.kind === 'running'}
            distance={distance}
            onRep={(line) => form.set('reps', `${fields.reps.trimEnd()}\n${line}`.trimStart())}
          />
          <TimesField
            id={`${id}-reps`}
            name="reps"
            label="Reps, one a line"
            hint="Type or paste: 31.5 33.5, with blanks, tabs or semicolons between."
            what="time"
            value={fields.reps}
            onValue={(text) => form.set('reps', text)}
            reading={view.reps.text}
            errors={view.repsErrors}
            lines={6}
          />
          <RestField
            id={id}
            fields={fields}
            onValue={form.set}
            error={view.restError}
            distance={distance}
            reps={view.reps.reps.length}
          />
          <div class="actions">
            <button type="button" class="button quiet" onClick={() => form.replace(tuesday)}>
              Show the example
            </button>
            <button type="button" class="button quiet" onClick={() => form.set('reps', '')}>
              Clear the reps
            </button>
          </div>
        </form>
        {view.result ? (
          <Result result={view.result} />
        ) : (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      <ShareBar
        href={addressOf(fields)}
        problems={problems}
        csv={view.result && csvOf(view.result)}
      />
    </div>
  );
}

function Result({ result }: { readonly result: SetResult }) {
  const { set, reading, race, raceDistance, sentence, cautions } = result;
  const unit = set.pool.unit;
  const table = repRows(reading);
  if (race === null || reading.honestPace === null) {
    return (
      <ResultCard
        headline={{
          label: `Whole reps, per 100 ${unit}`,
          figure: formatTime(reading.repPace),
          note: 'Flatters: no rep has a time at halfway.',
        }}
        cautions={cautions}
        sentence={sentence}
      >
        <NumberTable caption="Reps" {...table} />
      </ResultCard>
    );
  }
  return (
    <ResultCard
      headline={{
        label: `Honest pace, per 100 ${unit}`,
        figure: formatTime(reading.honestPace),
        note: `${formatTime(race.time)} for ${raceDistance} ${unit}`,
      }}
      beside={[
        {
          label: 'Whole reps promise',
          figure: formatTime(race.wholeReps),
          note: `${formatTime(reading.repPace)} per 100`,
        },
        {
          label: 'Optimism of the set',
          figure: formatTime(race.optimism, { signed: true }),
          note: `${formatTime(reading.optimism as Hundredths, { signed: true })} per 100`,
        },
        {
          label: 'Range of one race',
          figure: race.range
            ? `${formatTime(race.range.low)} – ${formatTime(race.range.high)}`
            : 'not measured',
          note: race.range?.covers,
        },
      ]}
      cautions={cautions}
      sentence={sentence}
      working={<Working result={result} />}
    >
      <RepChart reading={reading} />
      <NumberTable caption={`Reps of ${set.repDistance} ${unit}`} {...table} />
    </ResultCard>
  );
}

function Working({ result: { reading, race, set } }: { readonly result: SetResult }) {
  const { halves } = reading;
  return (
    <>
      {halves && (
        <p>
          Mean halves {formatTime(halves.first)} and {formatTime(halves.second)}. Twice the second
          is {formatTime((2 * halves.second) as Hundredths)} for {set.repDistance}; the whole rep
          takes {formatTime(reading.average)}.
        </p>
      )}
      <p>
        Best {formatTime(reading.best)}, slowest {formatTime(reading.slowest)}; from the first third
        to the last, {formatTime(reading.fade, { signed: true })} a rep.
        {reading.rest !== null && ` Mean rest ${formatTime(reading.rest)}.`} Halves within{' '}
        {formatTime(reading.evenWithin)} of each other are called even here: a choice, not a
        published figure.
      </p>
      <ul>
        {race?.assumptions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

const kinds = [
  { value: 'halves', label: 'Halves, each by itself' },
  { value: 'running', label: 'The watch at halfway and at the wall' },
];

const waitingFor = (problems: readonly Problem[]): string =>
  `The pace appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function problemsOf(view: SetView, id: string): readonly Problem[] {
  const one = (name: string, message: string | null) =>
    message === null ? [] : [{ id: `${id}-${name}`, message }];
  return [
    ...one('length', view.pool === null ? view.poolError : null),
    ...one('distance', view.distanceError),
    ...one('race', view.raceError),
    ...view.repsErrors.map((message) => ({ id: `${id}-reps`, message })),
    ...one('rest', view.restError),
  ];
}

function csvOf({ reading, race, raceDistance }: SetResult) {
  const { columns, rows, total } = repRows(reading);
  const plain = [...rows, total].map(({ head, cells }) => [head, ...cells]);
  const estimate =
    race === null
      ? []
      : [
          [],
          [`Race of ${raceDistance}`, formatTime(race.time)],
          ['Whole reps promise', formatTime(race.wholeReps)],
        ];
  return { name: 'set', rows: [columns, ...plain, ...estimate] };
}
