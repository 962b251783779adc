import { ChoiceField } from './ChoiceField';
import { type RestFields, restLabel, restWindow } from './rest-text';
import { TimeField } from './TimeField';

interface Props {
  readonly id: string;
  readonly fields: RestFields;
  readonly onValue: (name: keyof RestFields, text: string) => void;
  readonly error: string | null;
  /** The distance of a rep, and how many there are. */
  readonly distance: number;
  readonly reps: number;
}

/** The rest between reps, by whichever time of it a coach has. */
export const RestField = ({ id, fields, onValue, error, distance, reps }: Props) => (
  <>
    <ChoiceField
      id={`${id}-known`}
      name="known"
      label="Known of the rest"
      as="list"
      options={kinds}
      value={fields.known}
      onValue={(text) => onValue('known', text)}
    />
    {fields.known !== 'nothing' && (
      <TimeField
        id={`${id}-rest`}
        name="rest"
        label={restLabel(fields.known)}
        value={fields.rest}
        onValue={(text) => onValue('rest', text)}
        within={restWindow(fields.known, distance, reps)}
        error={error}
      />
    )}
  </>
);

const kinds = [
  { value: 'sendOff', label: 'The send-off' },
  { value: 'rest', label: 'The rest after each rep' },
  { value: 'total', label: 'The time of the whole set' },
  { value: 'nothing', label: 'Nothing' },
];
