import { Board, ChoiceField } from '~/ui';
import { linesOf } from '~/ui/csv';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { saltmarsh } from './example';
import { type SendOffFields, shape } from './fields';
import { addressOf, type SendOffView, viewOf } from './model';
import { Parts } from './Parts';
import { handTable, LaneAnswer, SquadAnswer, squadTables } from './Results';

export default function Calculator(props: CalculatorProps<SendOffFields>) {
  const form = useForm(props, { id: 'send-offs', initial: saltmarsh, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, lane, plan } = view;

  return (
    <Board
      form={form}
      errors={errors}
      example={{ ...saltmarsh, what: fields.what }}
      cleared={{ ...saltmarsh, what: fields.what, swim: '', rest: '', squad: '' }}
      awaited="The send-off appears"
      answer={(lane && <LaneAnswer result={lane} />) ?? (plan && <SquadAnswer result={plan} />)}
      href={addressOf(fields)}
      csv={csvOf(view)}
    >
      <ChoiceField {...form.field('what')} label="What is wanted" options={kinds} />
      <Parts form={form} view={view} />
    </Board>
  );
}

const kinds = [
  { value: 'lane', label: 'The send-off of one lane' },
  { value: 'squad', label: 'A squad put into lanes' },
];

function csvOf({ lane, plan }: SendOffView) {
  const tables = lane ? [handTable(lane)] : plan ? squadTables(plan) : [];
  const rows = tables.flatMap((table) => [[table.caption], ...linesOf(table), []]);
  return rows.length === 0 ? null : { name: 'send-offs', rows };
}
