import { AddRep, ChoiceField, CountField, RestField, TimesField } from '~/ui';
import type { Form } from '~/ui/use-form';
import type { CompareFields } from './fields';
import type { CompareView } from './model';

interface Props {
  readonly id: string;
  readonly form: Form<CompareFields>;
  readonly view: CompareView;
}

/** A reading set, for those who have one. */
export function SetFields({ id, form, view }: Props) {
  const fields = form.fields.value;
  const distance = Number(fields.distance) || 100;
  return (
    <details class="set-fields" open={fields.reps.trim() !== ''}>
      <summary>A reading set, if there is one</summary>
      <CountField
        id={`${id}-distance`}
        name="distance"
        label={`Rep distance, ${view.pool?.unit ?? 'm'}`}
        value={fields.distance}
        onValue={(text) => form.set('distance', text)}
        error={view.errors.distance}
      />
      <ChoiceField
        id={`${id}-kind`}
        name="kind"
        label="The times of a rep are"
        options={kinds}
        value={fields.kind}
        onValue={(text) => form.set('kind', text)}
      />
      <AddRep
        id={id}
        running={fields.kind === 'running'}
        distance={distance}
        onRep={(line) => form.set('reps', `${fields.reps.trimEnd()}\n${line}`.trimStart())}
      />
      <TimesField
        id={`${id}-reps`}
        name="reps"
        label="Reps, one a line"
        hint="Type or paste: 31.5 33.5, with blanks, tabs or semicolons between."
        what="time"
        value={fields.reps}
        onValue={(text) => form.set('reps', text)}
        reading={view.reps.text}
        errors={view.errors.reps}
        lines={4}
      />
      <RestField
        id={id}
        fields={fields}
        onValue={form.set}
        error={view.errors.rest}
        distance={distance}
        reps={view.reps.reps.length}
      />
    </details>
  );
}

const kinds = [
  { value: 'halves', label: 'Halves, each by itself' },
  { value: 'running', label: 'The watch at halfway and at the wall' },
];
