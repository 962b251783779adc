import {
  AddressNotice,
  CountField,
  FormActions,
  PoolField,
  type Problem,
  ResultCard,
  ShareBar,
  TimeField,
} from '~/ui';
import { useForm } from '~/ui/use-form';
import { thursday } from './example';
import { addressOf, paceWindow, shape, viewOf, type WriteFields } from './model';
import { Result, tableOf } from './Result';
import { SetField } from './SetField';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: WriteFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = thursday, id = 'write', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const wrong = (name: string) => view.errors[name] ?? null;
  const problems: readonly Problem[] = Object.entries(view.errors).map(([name, message]) => ({
    id: `${id}-${name}`,
    message,
  }));
  const table = view.result && tableOf(view.result);

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={wrong('length')} />
          <SetField
            id={`${id}-set`}
            value={fields.set}
            onValue={(text) => form.set('set', text)}
            error={wrong('set')}
            slip={view.slip}
          />
          <div class="row">
            <TimeField
              id={`${id}-pace`}
              name="pace"
              label="Pace per 100"
              hint="For swims without a target; may stay empty"
              value={fields.pace}
              onValue={(text) => form.set('pace', text)}
              within={paceWindow}
              optional
            />
            <CountField
              id={`${id}-lane`}
              name="lane"
              label="Lane"
              hint="Where there are several send-offs"
              value={fields.lane}
              onValue={(text) => form.set('lane', text)}
              error={wrong('lane')}
            />
          </div>
          <FormActions
            form={form}
            example={thursday}
            cleared={{ ...thursday, set: '', pace: '' }}
          />
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
        csv={
          table && {
            name: 'set-clock',
            rows: [table.columns, ...table.rows.map(({ head, cells }) => [head, ...cells])],
          }
        }
      />
    </div>
  );
}

const waitingFor = (problems: readonly Problem[]): string =>
  `The totals appear once this is put right: ${problems.map(({ message }) => message).join(' ')}`;
