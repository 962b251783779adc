import { ChoiceField } from './ChoiceField';
import { restLabel, restWindow } from './rest-text';
import { TimeField } from './TimeField';
import type { AnyForm } from './use-form';

interface Props {
  readonly form: AnyForm;
  readonly error: string | null;
  /** The distance of a rep, and how many there are. */
  readonly distance: number;
  readonly reps: number;
}

/** The rest between reps, by whichever time of it a coach has. */
export function RestField({ form, error, distance, reps }: Props) {
  const known = form.field('known');
  return (
    <>
      <ChoiceField {...known} label="Known of the rest" as="list" options={kinds} />
      {known.value !== 'nothing' && (
        <TimeField
          {...form.field('rest')}
          label={restLabel(known.value)}
          within={restWindow(known.value, distance, reps)}
          error={error}
        />
      )}
    </>
  );
}

const kinds = [
  { value: 'sendOff', label: 'The send-off' },
  { value: 'rest', label: 'The rest after each rep' },
  { value: 'total', label: 'The time of the whole set' },
  { value: 'nothing', label: 'Nothing' },
];
