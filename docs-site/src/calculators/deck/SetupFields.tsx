import { ChoiceField, CountField, PoolField, TimeField, TimesField } from '~/ui';
import type { DeckFields } from './fields';
import { type DeckView, sendOffWindow, staggerWindow } from './model';

interface Props {
  readonly id: string;
  readonly fields: DeckFields;
  readonly view: DeckView;
  readonly onValue: (name: string, text: string) => void;
}

/** The set about to be timed: who leaves when. */
export function SetupFields({ id, fields, view, onValue }: Props) {
  const named = (name: string) => ({
    id: `${id}-${name}`,
    name,
    value: fields[name] ?? '',
    onValue: (text: string) => onValue(name, text),
  });
  const wrong = (name: string) => view.errors[name]?.[0] ?? null;
  const unit = view.pool?.unit ?? 'm';
  const distance = Number(fields.distance) || 100;
  return (
    <>
      <PoolField id={id} fields={fields} onValue={onValue} error={wrong('length')} />
      <TimesField
        {...named('swimmers')}
        label="Swimmers in the order they leave, one a line"
        hint="Name and expected rep time, then a lane if there is more than one. Paste from a spreadsheet, or type: Mara 1:05 2"
        what="expected time"
        reading={view.swimmers.paces}
        errors={view.errors['swimmers'] ?? []}
        lines={5}
        words
      />
      <div class="pair">
        <CountField {...named('reps')} label="Reps" error={wrong('reps')} />
        <CountField
          {...named('distance')}
          label={`Rep distance, ${unit}`}
          error={wrong('distance')}
        />
        <TimeField {...named('send-off')} label="Send-off" within={sendOffWindow(distance)} />
        <TimeField {...named('stagger')} label="Stagger" within={staggerWindow} />
      </div>
      <ChoiceField {...named('marks')} label="A touch is tapped" options={marks} />
      <ChoiceField
        {...named('buttons')}
        label="Buttons"
        options={
          fields.marks === 'finish' ? buttons.filter(({ value }) => value !== 'kinds') : buttons
        }
      />
    </>
  );
}

const marks = [
  { value: 'halfway-and-finish', label: 'At halfway and at the finish' },
  { value: 'finish', label: 'At the finish only' },
];
const buttons = [
  { value: 'one', label: 'One for everything' },
  { value: 'kinds', label: 'Halfway and finish' },
  { value: 'lanes', label: 'One a lane' },
];
