import { ChoiceField, CountField } from '~/ui';
import type { Form } from '~/ui/use-form';
import { legField, type WaterFields } from './fields';

interface Props {
  /** Which leg, a count from 1. */
  readonly n: number;
  readonly form: Form<WaterFields>;
  readonly errors: Readonly<Record<string, string>>;
}

/** One leg: how long it is, and how the water runs along and across it. */
export function LegFields({ n, form, errors }: Props) {
  const field = (name: string) => ({ ...form.field(name), error: errors[name] ?? null });
  return (
    <fieldset class="field leg">
      <legend>Leg {n}</legend>
      <div class="pair">
        <CountField {...field(`distance-${n}`)} label="Distance, m" />
        <ChoiceField {...form.field(`current-${n}`)} label="Water" as="list" options={ways} />
        {legField(form.fields.value, `current-${n}`) !== 'still' && (
          <CountField {...field(`size-${n}`)} label="How fast, m/s" parts />
        )}
        <CountField {...field(`cross-${n}`)} label="Across, m/s" parts />
      </div>
    </fieldset>
  );
}

const ways = [
  { value: 'still', label: 'Still' },
  { value: 'with', label: 'Runs with' },
  { value: 'against', label: 'Runs against' },
];
