import type { Pool } from 'backhalf';
import { ChoiceField, TimesField } from '~/ui';
import { lengthsOption } from '~/ui/lengths-text';
import type { AnyForm } from '~/ui/use-form';
import type { SwimText } from './swim-text';

interface Props {
  readonly form: AnyForm;
  /** Heads the fields' names in the address: `swum`, `swumEvery`, `swumKind`. */
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly text: SwimText;
  readonly pool: Pool | null;
  /** Whether the plan needs it; else how its times stand is asked once there are some. */
  readonly needed?: boolean;
}

/** The times of one swim, how far apart they are, and how they count. */
export function SwimField({ form, name, label, hint, text, pool, needed = false }: Props) {
  const times = form.field(name);
  const kind = form.field(`${name}Kind`);
  return (
    <>
      <TimesField
        {...times}
        label={label}
        hint={hint}
        what={kind.value === 'running' ? 'time' : 'lap'}
        reading={text.reading}
        errors={text.errors}
      />
      {(needed || times.value.trim() !== '') && (
        <>
          <ChoiceField
            {...form.field(`${name}Every`)}
            label="One time for every"
            as="list"
            options={[1, 2, 4].map((lengths) => lengthsOption(lengths, pool))}
          />
          <ChoiceField {...kind} label="The times are" options={kinds} />
        </>
      )}
    </>
  );
}

const kinds = [
  { value: 'laps', label: 'Laps, each by itself' },
  { value: 'running', label: 'Running times from the start' },
];
