import {
  AddressNotice,
  ChoiceField,
  FormActions,
  NumberTable,
  PoolField,
  type Problem,
  ResultCard,
  ShareBar,
} from '~/ui';
import { useForm } from '~/ui/use-form';
import type { Answer } from './answer';
import { ivo } from './example';
import { type ConvertFields, poolFields, shape } from './fields';
import { addressOf, viewOf } from './model';
import { GainField, PaceFields, SendOffFields, StretchFields, SwimFields } from './Parts';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: ConvertFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = ivo, id = 'convert', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const problems: readonly Problem[] = Object.entries(view.problems).map(([name, message]) => ({
    id: `${id}-${name}`,
    message,
  }));
  const parts = { id, fields, view, onValue: form.set };
  const Part = partFor[fields.what] ?? SwimFields;

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <ChoiceField
            id={`${id}-what`}
            name="what"
            label="Convert"
            options={kinds}
            value={fields.what}
            onValue={(text) => form.set('what', text)}
          />
          {(['from', 'to'] as const).map((side) => (
            <PoolField
              key={side}
              id={id}
              prefix={`${side}-`}
              label={side === 'from' ? 'Old pool' : 'New pool'}
              fields={poolFields(fields, side)}
              onValue={(name, text) => form.set(`${side}-${name}`, text)}
              error={view.problems[`${side}-length`] ?? null}
            />
          ))}
          <Part {...parts} />
          {fields.what !== 'distance' && <GainField {...parts} />}
          <FormActions form={form} example={ivo} cleared={cleared} />
        </form>
        <ResultCard {...(view.answer ? shown(view.answer) : waitFor(problems))} />
      </div>
      <ShareBar
        href={addressOf(fields)}
        problems={problems}
        csv={view.answer && { name: 'converted', rows: csvOf(view.answer) }}
      />
    </div>
  );
}

const partFor: Readonly<Record<string, typeof SwimFields>> = {
  time: SwimFields,
  pace: PaceFields,
  'send-off': SendOffFields,
  distance: StretchFields,
};

const cleared: ConvertFields = {
  ...ivo,
  distance: '',
  time: '',
  pace: '',
  'send-off': '',
  rep: '',
  stretch: '',
};

const kinds = [
  { value: 'time', label: 'The time of a swim' },
  { value: 'pace', label: 'A pace' },
  { value: 'send-off', label: 'A send-off' },
  { value: 'distance', label: 'A distance' },
];

const shown = ({ headline, beside, cautions, sentence, table, sources, working }: Answer) => ({
  headline,
  beside,
  cautions,
  sentence,
  children: (
    <>
      {table && (
        <div class="worded">
          <NumberTable {...table} />
        </div>
      )}
      <section class="sources" aria-label="Sources">
        <p class="sources-title">Where the figures come from</p>
        <dl>
          {sources.map(({ method, source }) => (
            <div key={method}>
              <dt>{method}</dt>
              <dd>{source}</dd>
            </div>
          ))}
        </dl>
      </section>
    </>
  ),
  working: working.map((sentence) => <p key={sentence}>{sentence}</p>),
});

const waitFor = (problems: readonly Problem[]) => ({
  headline: null,
  sentence: '',
  waiting: `The answer appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`,
});

const csvOf = ({ headline, beside, table, sources }: Answer): string[][] => [
  [headline.label, headline.figure],
  ...beside.map(({ label, figure }) => [label, figure]),
  [],
  ...(table
    ? [[...table.columns], ...table.rows.map(({ head, cells }) => [head, ...cells]), []]
    : []),
  ...sources.map(({ method, source }) => [method, source]),
];
