import { AddRep } from './AddRep';
import { ChoiceField } from './ChoiceField';
import { RestField } from './RestField';
import type { RepsText } from './reps-text';
import { TimesField } from './TimesField';
import type { AnyForm } from './use-form';

interface Props {
  readonly form: AnyForm;
  /** The name of the field that lists them. */
  readonly list: 'reps' | 'pieces';
  /** What one is called. */
  readonly what: 'rep' | 'piece';
  /** The times of one, as they would be typed. */
  readonly example: string;
  /** The list as `readReps` reads it. */
  readonly reading: RepsText;
  readonly errors: { readonly list: readonly string[]; readonly rest: string | null };
  /** How many lines the list shows before it scrolls, a count. */
  readonly lines: number;
}

/** The reps of a set that was swum: one after another or all at once, and the rest between them. */
export function RepsFields(props: Props) {
  const { form, list, what, example, reading, errors, lines } = props;
  const distance = Number(form.field('distance').value) || 100;
  const kind = form.field('kind');
  const all = form.field(list);
  return (
    <>
      <ChoiceField {...kind} label={`The times of a ${what} are`} options={kinds} />
      <AddRep
        id={form.id}
        running={kind.value === 'running'}
        distance={distance}
        what={what}
        onRep={(line) => all.onValue(`${all.value.trimEnd()}\n${line}`.trimStart())}
      />
      <TimesField
        {...all}
        label={`${what === 'rep' ? 'Reps' : 'Pieces'}, one a line`}
        hint={`Type or paste: ${example}, with blanks, tabs or semicolons between.`}
        what="time"
        reading={reading.text}
        errors={errors.list}
        lines={lines}
      />
      <RestField form={form} error={errors.rest} distance={distance} reps={reading.reps.length} />
    </>
  );
}

const kinds = [
  { value: 'halves', label: 'Halves, each by itself' },
  { value: 'running', label: 'The watch at halfway and at the wall' },
];
