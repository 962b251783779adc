import { Board, CountField, PoolField, TimeField } from '~/ui';
import { linesOf } from '~/ui/csv';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { thursday } from './example';
import { addressOf, paceWindow, shape, viewOf, type WriteFields } from './model';
import { Result, tableOf } from './Result';
import { SetField } from './SetField';

export default function Calculator(props: CalculatorProps<WriteFields>) {
  const form = useForm(props, { id: 'write', initial: thursday, shape });
  const fields = form.fields.value;
  const { errors, result, slip } = viewOf(fields);
  const wrong = (name: string) => errors[name] ?? null;

  return (
    <Board
      form={form}
      errors={errors}
      example={thursday}
      cleared={{ ...thursday, set: '', pace: '' }}
      awaited="The totals appear"
      answer={result && <Result result={result} />}
      href={addressOf(fields)}
      csv={result && { name: 'set-clock', rows: linesOf(tableOf(result)) }}
    >
      <PoolField form={form} error={wrong('length')} />
      <SetField {...form.field('set')} error={wrong('set')} slip={slip} />
      <div class="row">
        <TimeField
          {...form.field('pace')}
          label="Pace per 100"
          hint="For swims without a target; may stay empty"
          within={paceWindow}
          optional
        />
        <CountField
          {...form.field('lane')}
          label="Lane"
          hint="Where there are several send-offs"
          error={wrong('lane')}
        />
      </div>
    </Board>
  );
}
