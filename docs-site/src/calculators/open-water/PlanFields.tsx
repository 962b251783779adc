import { ChoiceField, CountField, TimeField } from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import type { Form } from '~/ui/use-form';
import { mostLegs, type WaterFields } from './fields';
import { LegFields } from './LegFields';
import { byWindow, goalWindow } from './plan';

interface Props {
  readonly form: Form<WaterFields>;
  readonly errors: Readonly<Record<string, string>>;
}

/** The course, and what the plan starts from. */
export function PlanFields({ form, errors }: Props) {
  const fields = form.fields.value;
  const legs = Number(fields.legs);
  const field = (name: string) => ({ ...form.field(name), error: errors[name] ?? null });
  return (
    <>
      <p class="hint">From buoy to buoy. Water across the leg, from either side, may stay empty.</p>
      {Array.from({ length: legs }, (_, i) => (
        <LegFields key={i} n={i + 1} form={form} errors={errors} />
      ))}
      <div class="actions">
        {legs < mostLegs && (
          <button
            type="button"
            class="button quiet"
            onClick={() => form.set('legs', String(legs + 1))}
          >
            Add a leg
          </button>
        )}
        {legs > 1 && (
          <button
            type="button"
            class="button quiet"
            onClick={() => form.set('legs', String(legs - 1))}
          >
            Take leg {legs} away
          </button>
        )}
      </div>
      <CountField {...field('laps')} label="Laps of this course" />
      <ChoiceField {...form.field('start')} label="Start from" options={starts} />
      {fields.start === 'pace' && (
        <TimeField
          {...field('pace')}
          label="Pace in still water, per 100 m"
          within={plausibleTimes(100)}
        />
      )}
      {fields.start === 'speed' && (
        <CountField {...field('speed')} label="Speed in still water, m/s" parts />
      )}
      {fields.start === 'goal' && (
        <TimeField {...field('goal')} label="Finish wanted" within={goalWindow(courseOf(fields))} />
      )}
      <ChoiceField {...form.field('split')} label="Second half" options={splits} />
      {fields.split === 'faster' && (
        <TimeField
          {...field('by')}
          label="Faster by"
          hint="Beyond what an even effort gives"
          within={byWindow}
        />
      )}
      <ChoiceField {...form.field('effect')} label="Also show" as="list" options={effects} />
    </>
  );
}

/** About how long the course is, to sort readings of a goal. */
const courseOf = (fields: WaterFields): number =>
  Array.from(
    { length: Number(fields.legs) },
    (_, i) => Number(fields[`distance-${i + 1}`]) || 0,
  ).reduce((sum, distance) => sum + distance, 0) * (Number(fields.laps) || 1);

const starts = [
  { value: 'pace', label: 'A pace' },
  { value: 'speed', label: 'A speed' },
  { value: 'goal', label: 'A finish time' },
];
const splits = [
  { value: 'even', label: 'Even effort' },
  { value: 'faster', label: 'Faster' },
];
const effects = [
  { value: 'none', label: 'Nothing more' },
  { value: 'drafting', label: 'What drafting may give' },
  { value: 'wetsuit', label: 'What a wetsuit may give' },
];
