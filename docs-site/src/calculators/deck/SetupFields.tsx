import { ChoiceField, CountField, PoolField, TimeField, TimesField } from '~/ui';
import type { Form } from '~/ui/use-form';
import type { DeckFields } from './fields';
import { type DeckView, sendOffWindow, staggerWindow } from './model';

interface Props {
  readonly form: Form<DeckFields>;
  readonly view: DeckView;
}

/** The set about to be timed: who leaves when. */
export function SetupFields({ form, view }: Props) {
  const fields = form.fields.value;
  const wrong = (name: string) => view.errors[name]?.[0] ?? null;
  const unit = view.pool?.unit ?? 'm';
  const distance = Number(fields.distance) || 100;
  return (
    <>
      <PoolField form={form} error={wrong('length')} />
      <TimesField
        {...form.field('swimmers')}
        label="Swimmers in the order they leave, one a line"
        hint="Name and expected rep time, then a lane if there is more than one. Paste from a spreadsheet, or type: Mara 1:05 2"
        what="expected time"
        reading={view.swimmers.times}
        errors={view.errors['swimmers'] ?? []}
        lines={5}
        words
      />
      <div class="pair">
        <CountField {...form.field('reps')} label="Reps" error={wrong('reps')} />
        <CountField
          {...form.field('distance')}
          label={`Rep distance, ${unit}`}
          error={wrong('distance')}
        />
        <TimeField {...form.field('send-off')} label="Send-off" within={sendOffWindow(distance)} />
        <TimeField {...form.field('stagger')} label="Stagger" within={staggerWindow} />
      </div>
      <ChoiceField {...form.field('marks')} label="A touch is tapped" options={marks} />
      <ChoiceField
        {...form.field('buttons')}
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
