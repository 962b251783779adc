import { ChoiceField, CountField, TimeField } from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import type { Form } from '~/ui/use-form';
import { hasPoints } from './bases';
import type { ConvertFields } from './fields';
import { gainText, gainWindow, publishedGains, strokeOf } from './gains';
import type { ConvertView } from './model';
import { sendOffWindow } from './send-off';

interface Props {
  readonly form: Form<ConvertFields>;
  readonly view: ConvertView;
}

const named = ({ form, view }: Props, name: string) => ({
  ...form.field(name),
  error: view.problems[name] ?? null,
});

export function SwimFields(props: Props) {
  const { form, view } = props;
  const fields = form.fields.value;
  const unit = view.from?.unit ?? 'm';
  const window = plausibleTimes(Number(fields.distance) || 100);
  const bySex = [fields['from-pool'], fields['to-pool']].sort().join(' ') === '25yd 50m';
  const metres = view.from !== null && view.to !== null && hasPoints(view.from, view.to);
  return (
    <>
      <div class="row">
        <CountField {...named(props, 'distance')} label={`Distance, ${unit}`} />
        <TimeField {...named(props, 'time')} label="Time of the swim" within={window} />
      </div>
      {bySex && <ChoiceField {...props.form.field('sex')} label="Event for" options={sexes} />}
      {metres && (
        <div class="row">
          <TimeField
            {...named(props, 'from-base')}
            label="Base time in the old pool"
            hint="For points; may stay empty"
            optional={fields['to-base'].trim() === ''}
            within={window}
          />
          <TimeField
            {...named(props, 'to-base')}
            label="Base time in the new pool"
            hint="From the same year’s table"
            optional={fields['from-base'].trim() === ''}
            within={window}
          />
        </div>
      )}
    </>
  );
}

export const PaceFields = (props: Props) => (
  <TimeField
    {...named(props, 'pace')}
    label={`Pace per 100 ${props.view.from?.unit ?? 'm'}`}
    within={plausibleTimes(100)}
  />
);

export const SendOffFields = (props: Props) => (
  <>
    <div class="row">
      <CountField
        {...named(props, 'rep')}
        label={`Rep distance, ${props.view.from?.unit ?? 'm'}`}
      />
      <TimeField
        {...named(props, 'send-off')}
        label="Send-off"
        within={sendOffWindow(Number(props.form.fields.value.rep) || 100)}
      />
    </div>
    <ChoiceField
      {...props.form.field('round')}
      label="Rounded to 5 s of the pace clock"
      options={roundings}
    />
  </>
);

export const StretchFields = (props: Props) => (
  <CountField
    {...named(props, 'stretch')}
    label={`Distance, ${props.view.from?.unit === 'yd' ? 'yards' : 'metres'}`}
    parts
  />
);

/** The stroke, and what one turn of it gains: a published value or a typed one. */
export function GainField(props: Props) {
  const fields = props.form.fields.value;
  const published = publishedGains(strokeOf(fields)).map(({ key, name, gainPerTurn }) => ({
    value: key,
    label: `${gainText(gainPerTurn)}, ${name}`,
  }));
  const kept = published.some(({ value }) => value === fields.gain);
  const options = [
    { value: 'none', label: 'Not chosen' },
    ...published,
    { value: 'own', label: 'Type one' },
  ];
  return (
    <>
      <ChoiceField {...props.form.field('stroke')} label="Stroke" as="list" options={strokes} />
      <ChoiceField
        {...props.form.field('gain')}
        label="What one turn gains"
        as="list"
        options={
          kept || fields.gain === 'none' || fields.gain === 'own'
            ? options
            : [...options, { value: fields.gain, label: 'Published for another stroke' }]
        }
      />
      {fields.gain === 'own' && (
        <TimeField
          {...named(props, 'own')}
          label="Gain per turn, seconds"
          hint="0.6 or 0,6"
          within={gainWindow}
        />
      )}
    </>
  );
}

const sexes = [
  { value: 'W', label: 'Women' },
  { value: 'M', label: 'Men' },
];
const strokes = [
  { value: 'free', label: 'Freestyle' },
  { value: 'back', label: 'Backstroke' },
  { value: 'breast', label: 'Breaststroke' },
  { value: 'fly', label: 'Butterfly' },
  { value: 'medley', label: 'Individual medley' },
];
const roundings = [
  { value: 'up', label: 'Up' },
  { value: 'nearest', label: 'To the nearest' },
  { value: 'down', label: 'Down' },
];
