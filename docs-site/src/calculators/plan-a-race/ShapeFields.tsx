import { ChoiceField, TimeField } from '~/ui';
import type { Form } from '~/ui/use-form';
import { creditLabel, edgeTimes, gapLabel, liftLabel, type PlanFields, smallTimes } from './fields';
import type { PlanView } from './model';
import { SwimField } from './SwimField';

interface Props {
  readonly form: Form<PlanFields>;
  readonly view: PlanView;
}

/** How the race is to be swum, and what each way of saying so needs. */
export function ShapeFields({ form, view }: Props) {
  const fields = form.fields.value;
  const { errors, goal, own, pool } = view;
  return (
    <>
      <ChoiceField {...form.field('shape')} label="Shape of the race" options={shapes} />
      {fields.shape === 'halves' && (
        <div class="row">
          <ChoiceField {...form.field('way')} label="Second half" options={ways} />
          <TimeField
            {...form.field('gap')}
            label={gapLabel}
            within={smallTimes(goal)}
            error={errors.gap}
          />
        </div>
      )}
      {fields.shape === 'own' && (
        <SwimField
          form={form}
          name="own"
          label="Times of the earlier swim"
          hint="Its laps are scaled to the goal, dive and finish with them."
          text={own}
          pool={pool}
          needed
        />
      )}
      {(fields.shape === 'even' || fields.shape === 'halves') && (
        <fieldset class="field">
          <legend>Dive and finish, if you plan for them</legend>
          <p class="hint">Nothing is taken off unless you say so.</p>
          <div class="row pair">
            <TimeField
              {...form.field('credit')}
              label={creditLabel}
              optional
              within={edgeTimes}
              error={errors.credit}
            />
            <TimeField
              {...form.field('lift')}
              label={liftLabel}
              optional
              within={edgeTimes}
              error={errors.lift}
            />
          </div>
        </fieldset>
      )}
    </>
  );
}

const shapes = [
  { value: 'even', label: 'Even' },
  { value: 'halves', label: 'Halves that differ' },
  { value: 'W', label: 'As women’s Olympic finals' },
  { value: 'M', label: 'As men’s Olympic finals' },
  { value: 'own', label: 'As an earlier swim' },
];
const ways = [
  { value: 'faster', label: 'Faster' },
  { value: 'slower', label: 'Slower' },
];
