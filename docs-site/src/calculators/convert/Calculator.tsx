import { Board, ChoiceField, PoolField } from '~/ui';
import { type Csv, linesOf } from '~/ui/csv';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import type { Answer } from './answer';
import { ivo } from './example';
import { type ConvertFields, shape } from './fields';
import { addressOf, viewOf } from './model';
import { GainField, PaceFields, SendOffFields, StretchFields, SwimFields } from './Parts';
import { Result } from './Result';

export default function Calculator(props: CalculatorProps<ConvertFields>) {
  const form = useForm(props, { id: 'convert', initial: ivo, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { problems, answer } = view;
  const Part = partFor[fields.what] ?? SwimFields;

  return (
    <Board
      form={form}
      errors={problems}
      example={ivo}
      cleared={cleared}
      awaited="The answer appears"
      answer={answer && <Result answer={answer} />}
      href={addressOf(fields)}
      csv={answer && { name: 'converted', rows: csvOf(answer) }}
    >
      <ChoiceField {...form.field('what')} label="Convert" options={kinds} />
      {(['from', 'to'] as const).map((side) => (
        <PoolField
          key={side}
          form={form}
          prefix={`${side}-`}
          label={side === 'from' ? 'Old pool' : 'New pool'}
          error={problems[`${side}-length`] ?? null}
        />
      ))}
      <Part form={form} view={view} />
      {fields.what !== 'distance' && <GainField form={form} view={view} />}
    </Board>
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

const csvOf = ({ headline, beside, table, sources }: Answer): Csv['rows'] => [
  [headline.label, headline.figure],
  ...beside.map(({ label, figure }) => [label, figure]),
  [],
  ...(table ? [...linesOf(table), []] : []),
  ...sources.map(({ method, source }) => [method, source]),
];
