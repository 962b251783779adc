import { AddressNotice, ChoiceField, FormActions, type Problem, ResultCard, ShareBar } from '~/ui';
import { useForm } from '~/ui/use-form';
import { saltmarsh } from './example';
import { type SendOffFields, shape } from './fields';
import { addressOf, type SendOffView, viewOf } from './model';
import { Parts } from './Parts';
import { handTable, LaneAnswer, SquadAnswer, squadTables } from './Results';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: SendOffFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator(props: Props) {
  const { initial = saltmarsh, id = 'send-offs', ownPage = false } = props;
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const problems: readonly Problem[] = Object.entries(view.errors).flatMap(([name, messages]) =>
    messages.map((message) => ({ id: `${id}-${name}`, message })),
  );

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <ChoiceField
            id={`${id}-what`}
            name="what"
            label="What is wanted"
            options={kinds}
            value={fields.what}
            onValue={(text) => form.set('what', text)}
          />
          <Parts id={id} fields={fields} view={view} onValue={form.set} />
          <FormActions
            form={form}
            example={{ ...saltmarsh, what: fields.what }}
            cleared={{ ...saltmarsh, what: fields.what, swim: '', rest: '', squad: '' }}
          />
        </form>
        {view.lane && <LaneAnswer result={view.lane} />}
        {view.plan && <SquadAnswer result={view.plan} />}
        {!view.lane && !view.plan && (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      <ShareBar href={addressOf(fields)} problems={problems} csv={csvOf(view)} />
    </div>
  );
}

const kinds = [
  { value: 'lane', label: 'The send-off of one lane' },
  { value: 'squad', label: 'A squad put into lanes' },
];

const waitingFor = (problems: readonly Problem[]): string =>
  `The send-off appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function csvOf({ lane, plan }: SendOffView) {
  const tables = lane ? [handTable(lane)] : plan ? squadTables(plan) : [];
  const rows = tables.flatMap(({ caption, columns, rows: lines }) => [
    [caption],
    columns,
    ...lines.map(({ head, cells }) => [head, ...cells]),
    [],
  ]);
  return rows.length === 0 ? null : { name: 'send-offs', rows };
}
