import { Board, ChoiceField, CountField, ResultCard, TimeField } from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { readAnswer } from './CurrentResult';
import { withCurrent } from './current';
import { ebb } from './example';
import { emptyLegs, shape, type WaterFields } from './fields';
import { addressOf, viewOf } from './model';
import { PlanFields } from './PlanFields';
import { csvOf, planAnswer } from './PlanResult';

export default function Calculator(props: CalculatorProps<WaterFields>) {
  const form = useForm(props, { id: 'water', initial: ebb, shape });
  const fields = form.fields.value;
  const { errors, planned, read } = viewOf(fields);
  const answer =
    (planned && planAnswer(planned)) ??
    (read && readAnswer(read, () => form.replace(withCurrent(fields, read))));
  const window = plausibleTimes(Number(fields.length) || 100);

  return (
    <Board
      form={form}
      errors={errors}
      example={ebb}
      cleared={cleared}
      awaited="The answer appears"
      answer={answer && <ResultCard {...answer} />}
      href={addressOf(fields)}
      csv={planned && { name: 'open-water', rows: csvOf(planned) }}
    >
      <ChoiceField {...form.field('job')} label="What is wanted" options={jobs} />
      {fields.job === 'read' ? (
        <>
          <CountField
            {...form.field('length')}
            label="Distance one way, metres"
            error={errors['length'] ?? null}
          />
          <div class="row">
            <TimeField
              {...form.field('out')}
              label="Time out"
              within={window}
              error={errors['out'] ?? null}
            />
            <TimeField {...form.field('back')} label="Time back" within={window} />
          </div>
        </>
      ) : (
        <PlanFields form={form} errors={errors} />
      )}
    </Board>
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
