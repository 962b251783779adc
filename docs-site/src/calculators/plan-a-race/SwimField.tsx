import type { Pool } from 'backhalf';
import { ChoiceField, TimesField } from '~/ui';
import { distanceText } from '~/ui/wording';
import type { SwimFields, SwimText } from './swim-text';

interface Props {
  readonly id: string;
  /** Heads the fields' names in the address: `swum`, `swumEvery`, `swumKind`. */
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly fields: SwimFields;
  readonly text: SwimText;
  readonly pool: Pool | null;
  /** Whether the plan needs it; else how its times stand is asked once there are some. */
  readonly needed?: boolean;
  readonly onValue: (name: string, text: string) => void;
}

/** The times of one swim, how far apart they are, and how they count. */
export function SwimField({
  id,
  name,
  label,
  hint,
  fields,
  text,
  pool,
  needed = false,
  onValue,
}: Props) {
  const apart = ['1', '2', '4'].map((value) => {
    const lengths = value === '1' ? '1 length' : `${value} lengths`;
    const distance = pool && `${distanceText(pool.length * Number(value))} ${pool.unit}`;
    return { value, label: distance ? `${distance} (${lengths})` : lengths };
  });
  return (
    <>
      <TimesField
        id={`${id}-${name}`}
        name={name}
        label={label}
        hint={hint}
        what={fields.kind === 'running' ? 'time' : 'lap'}
        value={fields.times}
        onValue={(value) => onValue(name, value)}
        reading={text.reading}
        errors={text.errors}
      />
      {(needed || fields.times.trim() !== '') && (
        <>
          <ChoiceField
            id={`${id}-${name}-every`}
            name={`${name}Every`}
            label="One time for every"
            as="list"
            options={apart}
            value={fields.every}
            onValue={(value) => onValue(`${name}Every`, value)}
          />
          <ChoiceField
            id={`${id}-${name}-kind`}
            name={`${name}Kind`}
            label="The times are"
            options={kinds}
            value={fields.kind}
            onValue={(value) => onValue(`${name}Kind`, value)}
          />
        </>
      )}
    </>
  );
}

const kinds = [
  { value: 'laps', label: 'Laps, each by itself' },
  { value: 'running', label: 'Running times from the start' },
];
