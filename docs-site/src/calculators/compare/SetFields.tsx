import { CountField, RepsFields } from '~/ui';
import type { Form } from '~/ui/use-form';
import type { CompareFields } from './fields';
import type { CompareView } from './model';

interface Props {
  readonly form: Form<CompareFields>;
  readonly view: CompareView;
}

/** A reading set, for those who have one. */
export const SetFields = ({ form, view: { pool, reps, errors } }: Props) => (
  <details class="set-fields" open={form.fields.value.reps.trim() !== ''}>
    <summary>A reading set, if there is one</summary>
    <CountField
      {...form.field('distance')}
      label={`Rep distance, ${pool?.unit ?? 'm'}`}
      error={errors.distance}
    />
    <RepsFields
      form={form}
      list="reps"
      what="rep"
      example="31.5 33.5"
      reading={reps}
      errors={{ list: errors.reps, rest: errors.rest }}
      lines={4}
    />
  </details>
);
