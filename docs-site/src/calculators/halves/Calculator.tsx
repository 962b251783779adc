import { formatTime, type Pool, type Splits } from 'backhalf';
import {
  AddressNotice,
  ChoiceField,
  FormActions,
  PoolField,
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
  timesText,
  verdictWords,
  viewOf,
} from './model';
import { Slips } from './Slips';

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
  const mend = (swim: Splits) => form.replace({ ...fields, times: timesText(swim, fields) });

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={view.lengthError} />
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
          <FormActions form={form} example={heat} cleared={{ ...fields, times: '' }} />
        </form>
        <ResultCard
          {...(view.result && pool ? answer(view.result, pool, mend) : waitFor(problems))}
        />
      </div>
      <ShareBar href={addressOf(fields)} problems={problems} csv={view.result && csvOf(view)} />
    </div>
  );
}

function answer(result: HalvesResult, pool: Pool, mend: (swim: Splits) => void): ResultCardProps {
  const { swim, halves, comparison, profile, slips, sentence, cautions } = result;
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
        <Slips slips={slips} onMend={mend} />
        {profile && (
          <SplitChart swims={[swim]} names={['Swim']} unit={pool.unit} finding={sentence} />
        )}
        <SplitTable caption="Laps of the swim" swims={[swim]} names={['Swim']} unit={pool.unit} />
      </>
    ),
  };
}

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
