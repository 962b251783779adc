import { CountField, TimeField, TimesField } from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import type { Form } from '~/ui/use-form';
import type { SendOffFields } from './fields';
import { restWindow, type SendOffView, staggerWindow } from './model';

interface Props {
  readonly form: Form<SendOffFields>;
  readonly view: SendOffView;
}

/** The lane or the squad, and the set it is to swim. */
export function Parts({ form, view }: Props) {
  const fields = form.fields.value;
  const named = (name: string) => ({
    ...form.field(name),
    error: view.errors[name]?.[0] ?? null,
  });
  const window = plausibleTimes(Number(fields.distance) || 100);
  return (
    <>
      {fields.what === 'squad' ? (
        <>
          <TimesField
            {...named('squad')}
            label="The squad, one swimmer a line"
            hint="Name and pace per 100. Paste from a spreadsheet, or type: Mara 1:05"
            what="pace"
            reading={view.squad.times}
            errors={view.errors['squad'] ?? []}
            lines={8}
            words
          />
          <div class="row pair">
            <CountField {...named('lanes')} label="Lanes" />
            <CountField {...named('cap')} label="Most in a lane" />
          </div>
        </>
      ) : (
        <div class="row pair">
          <TimeField {...named('swim')} label="Time of a rep" within={window} />
          <CountField {...named('swimmers')} label="Swimmers in the lane" />
        </div>
      )}
      <div class="row pair">
        <CountField {...named('distance')} label="Rep distance" />
        <TimeField {...named('rest')} label="Rest wanted" within={restWindow} />
      </div>
      <div class="row pair">
        <CountField {...named('reps')} label="Reps" />
        <TimeField {...named('stagger')} label="Between swimmers" within={staggerWindow} />
      </div>
    </>
  );
}
