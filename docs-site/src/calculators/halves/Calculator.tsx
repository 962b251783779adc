import { formatTime, type Splits } from 'backhalf';
import { Board, ChoiceField, PoolField, TimesField } from '~/ui';
import { linesOf } from '~/ui/csv';
import { lengthsOption } from '~/ui/lengths-text';
import { splitRows } from '~/ui/SplitTable';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { heat } from './example';
import { addressOf, type HalvesFields, type HalvesView, shape, timesText, viewOf } from './model';
import { Result } from './Result';

export default function Calculator(props: CalculatorProps<HalvesFields>) {
  const form = useForm(props, { id: 'halves', initial: heat, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, pool, result } = view;
  const mend = (swim: Splits) => form.replace({ ...fields, times: timesText(swim, fields) });

  return (
    <Board
      form={form}
      errors={errors}
      example={heat}
      cleared={{ ...fields, times: '' }}
      awaited="The halves appear"
      answer={result && pool && <Result result={result} pool={pool} onMend={mend} />}
      href={addressOf(fields)}
      csv={csvOf(view)}
    >
      <PoolField form={form} error={errors.length} />
      <div class="row">
        <ChoiceField
          {...form.field('every')}
          label="One time for every"
          as="list"
          options={[1, 2, 4].map((lengths) => lengthsOption(lengths, pool))}
        />
        <ChoiceField {...form.field('start')} label="Start" options={startOptions} />
      </div>
      <ChoiceField {...form.field('kind')} label="The times are" options={kindOptions} />
      <TimesField
        {...form.field('times')}
        label="Times"
        hint="Type them, or paste a column or a table. 31.4, 1:05.30, 1.05,3 and 3140 will all do."
        what={fields.kind === 'running' ? 'time' : 'lap'}
        reading={view.reading}
        errors={errors.times}
      />
    </Board>
  );
}

const startOptions = [
  { value: 'dive', label: 'Dive' },
  { value: 'push', label: 'Push-off' },
];
const kindOptions = [
  { value: 'laps', label: 'Laps, each by itself' },
  { value: 'running', label: 'Running times from the start' },
];

function csvOf({ result, pool }: HalvesView) {
  if (result === null || pool === null) return null;
  const { first, second } = result.halves;
  return {
    name: 'halves',
    rows: [
      ...linesOf(splitRows([result.swim], ['Lap'], pool.unit)),
      [],
      ['First half', formatTime(first)],
      ['Second half', formatTime(second)],
      ['Second against first', formatTime(result.comparison.difference, { signed: true })],
    ],
  };
}
