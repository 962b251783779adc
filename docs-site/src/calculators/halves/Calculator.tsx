import { formatTime, type Pool } from 'backhalf';
import {
  AddressNotice,
  ChoiceField,
  CountField,
  type Problem,
  ResultCard,
  type ResultCardProps,
  ShareBar,
  SplitChart,
  SplitTable,
  splitRows,
  TimesField,
} from '~/ui';
import { useForm } from '~/ui/use-form';
import { distanceText, signedPercent } from '~/ui/wording';
import { heat } from './example';
import {
  addressOf,
  type HalvesFields,
  type HalvesResult,
  type HalvesView,
  shape,
  verdictWords,
  viewOf,
} from './model';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: HalvesFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = heat, id = 'halves', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const problems = problemsOf(view, id);
  const pool = view.pool;

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <ChoiceField
            id={`${id}-pool`}
            name="pool"
            label="Pool"
            options={poolOptions}
            value={fields.pool}
            onValue={(text) => form.set('pool', text)}
          />
          {fields.pool === 'other' && (
            <div class="row">
              <CountField
                id={`${id}-length`}
                name="length"
                label="Length of the pool"
                hint="20, or 33 1/3"
                parts
                value={fields.length}
                onValue={(text) => form.set('length', text)}
                error={view.lengthError}
              />
              <ChoiceField
                id={`${id}-unit`}
                name="unit"
                label="Unit"
                options={unitOptions}
                value={fields.unit}
                onValue={(text) => form.set('unit', text)}
              />
            </div>
          )}
          <div class="row">
            <ChoiceField
              id={`${id}-every`}
              name="every"
              label="One time for every"
              as="list"
              options={everyOptions(pool)}
              value={fields.every}
              onValue={(text) => form.set('every', text)}
            />
            <ChoiceField
              id={`${id}-start`}
              name="start"
              label="Start"
              options={startOptions}
              value={fields.start}
              onValue={(text) => form.set('start', text)}
            />
          </div>
          <ChoiceField
            id={`${id}-kind`}
            name="kind"
            label="The times are"
            options={kindOptions}
            value={fields.kind}
            onValue={(text) => form.set('kind', text)}
          />
          <TimesField
            id={`${id}-times`}
            name="times"
            label="Times"
            hint="Type them, or paste a column or a table. 31.4, 1:05.30, 1.05,3 and 3140 will all do."
            what={fields.kind === 'running' ? 'time' : 'lap'}
            value={fields.times}
            onValue={(text) => form.set('times', text)}
            reading={view.reading}
            errors={view.timesErrors}
          />
          <div class="actions">
            <button type="button" class="button quiet" onClick={() => form.replace(heat)}>
              Show the example
            </button>
            <button
              type="button"
              class="button quiet"
              onClick={() => form.replace({ ...fields, times: '' })}
            >
              Clear the times
            </button>
          </div>
        </form>
        <ResultCard {...(view.result && pool ? answer(view.result, pool) : waitFor(problems))} />
      </div>
      <ShareBar href={addressOf(fields)} problems={problems} csv={view.result && csvOf(view)} />
    </div>
  );
}

function answer(result: HalvesResult, pool: Pool): ResultCardProps {
  const { swim, halves, comparison, profile, sentence, cautions } = result;
  const finish = swim.marks.at(-1);
  const total = finish ? formatTime(finish.time) : '';
  return {
    headline: {
      label: 'Second half against the first',
      figure: formatTime(comparison.difference, { signed: true }),
      note: `${verdictWords[comparison.verdict]}, ${signedPercent(comparison.ratio - 1)} %`,
    },
    beside: [
      { label: 'First half', figure: formatTime(halves.first) },
      { label: 'Second half', figure: formatTime(halves.second) },
      { label: 'Whole swim', figure: total },
    ],
    cautions,
    sentence,
    working: (
      <>
        <p>
          Halfway is {distanceText((finish?.distance ?? 0) / 2)} {pool.unit}. The time there is the
          first half; what remains of {total} is the second.
        </p>
        {profile && (
          <p>
            Leaving out the first and the last lap, the laps between change by{' '}
            {signedSeconds(profile.middle.drift)} s from one to the next (a straight line through
            them) and scatter by {signedPercent(profile.middle.variation).replace('+', '')} %. The
            first lap is {signedPercent(profile.first)} % against them, the last{' '}
            {signedPercent(profile.last)} %.
          </p>
        )}
      </>
    ),
    children: (
      <>
        {profile && (
          <SplitChart swims={[swim]} names={['Swim']} unit={pool.unit} finding={sentence} />
        )}
        <SplitTable caption="Laps of the swim" swims={[swim]} names={['Swim']} unit={pool.unit} />
      </>
    ),
  };
}

const poolOptions = [
  { value: '25yd', label: '25 yd' },
  { value: '25m', label: '25 m' },
  { value: '50m', label: '50 m' },
  { value: 'other', label: 'Other' },
];
const unitOptions = [
  { value: 'm', label: 'metres' },
  { value: 'yd', label: 'yards' },
];
const startOptions = [
  { value: 'dive', label: 'Dive' },
  { value: 'push', label: 'Push-off' },
];
const kindOptions = [
  { value: 'laps', label: 'Laps, each by itself' },
  { value: 'running', label: 'Running times from the start' },
];

const everyOptions = (pool: Pool | null) =>
  ['1', '2', '4'].map((value) => {
    const lengths = value === '1' ? '1 length' : `${value} lengths`;
    const distance = pool && `${distanceText(pool.length * Number(value))} ${pool.unit}`;
    return { value, label: distance ? `${distance} (${lengths})` : lengths };
  });

/** Hundredths per lap, a fitted slope and no time, as seconds. */
const signedSeconds = (slope: number): string =>
  `${slope < 0 ? '−' : '+'}${(Math.abs(slope) / 100).toFixed(2)}`;

const waitFor = (problems: readonly Problem[]): ResultCardProps => ({
  headline: null,
  sentence: '',
  waiting: `The halves appear once this is put right: ${problems.map(({ message }) => message).join(' ')}`,
});

function problemsOf(view: HalvesView, id: string): readonly Problem[] {
  const length = view.pool === null && view.lengthError;
  return [
    ...(length ? [{ id: `${id}-length`, message: length }] : []),
    ...view.timesErrors.map((message) => ({ id: `${id}-times`, message })),
  ];
}

function csvOf({ result, pool }: HalvesView) {
  if (result === null || pool === null) return null;
  const { columns, rows } = splitRows([result.swim], ['Lap'], pool.unit);
  const { first, second } = result.halves;
  return {
    name: 'halves',
    rows: [
      columns,
      ...rows.map(({ head, cells }) => [head, ...cells]),
      [],
      ['First half', formatTime(first)],
      ['Second half', formatTime(second)],
      ['Second against first', formatTime(result.comparison.difference, { signed: true })],
    ],
  };
}
