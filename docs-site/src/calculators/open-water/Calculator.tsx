import {
  AddressNotice,
  ChoiceField,
  CountField,
  FormActions,
  type Problem,
  ResultCard,
  ShareBar,
  TimeField,
} from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import { useForm } from '~/ui/use-form';
import { readAnswer } from './CurrentResult';
import { withCurrent } from './current';
import { ebb } from './example';
import { emptyLegs, shape, type WaterFields } from './fields';
import { addressOf, viewOf } from './model';
import { PlanFields } from './PlanFields';
import { csvOf, planAnswer } from './PlanResult';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: WaterFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = ebb, id = 'water', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const { errors, planned, read } = viewOf(fields);
  const problems: readonly Problem[] = Object.entries(errors).map(([name, message]) => ({
    id: `${id}-${name}`,
    message,
  }));
  const named = (name: string) => ({
    id: `${id}-${name}`,
    name,
    value: fields[name] ?? '',
    onValue: (text: string) => form.set(name, text),
  });
  const answer =
    (planned && planAnswer(planned)) ??
    (read && readAnswer(read, () => form.replace(withCurrent(fields, read)))) ??
    waitFor(problems);
  const window = plausibleTimes(Number(fields.length) || 100);

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <ChoiceField {...named('job')} label="What is wanted" options={jobs} />
          {fields.job === 'read' ? (
            <>
              <CountField
                {...named('length')}
                label="Distance one way, metres"
                error={errors['length'] ?? null}
              />
              <div class="row">
                <TimeField
                  {...named('out')}
                  label="Time out"
                  within={window}
                  error={errors['out'] ?? null}
                />
                <TimeField {...named('back')} label="Time back" within={window} />
              </div>
            </>
          ) : (
            <PlanFields fields={fields} errors={errors} named={named} onValue={form.set} />
          )}
          <FormActions form={form} example={ebb} cleared={cleared} />
        </form>
        <ResultCard {...answer} />
      </div>
      <ShareBar
        href={addressOf(fields)}
        problems={problems}
        csv={planned && { name: 'open-water', rows: csvOf(planned) }}
      />
    </div>
  );
}

const cleared: WaterFields = {
  ...ebb,
  ...emptyLegs,
  pace: '',
  speed: '',
  goal: '',
  length: '',
  out: '',
  back: '',
};

const jobs = [
  { value: 'plan', label: 'Plan a swim' },
  { value: 'read', label: 'Read the current from two times' },
];

const waitFor = (problems: readonly Problem[]) => ({
  headline: null,
  sentence: '',
  waiting: `The answer appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`,
});
