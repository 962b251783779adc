import { ChoiceField, CountField } from '~/ui';
import { legField, type WaterFields } from './fields';

interface Field {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
}

interface Props {
  /** Which leg, a count from 1. */
  readonly n: number;
  readonly fields: WaterFields;
  readonly field: (name: string) => Field & { readonly error: string | null };
  readonly named: (name: string) => Field;
}

/** One leg: how long it is, and how the water runs along and across it. */
export const LegFields = ({ n, fields, field, named }: Props) => (
  <fieldset class="field leg">
    <legend>Leg {n}</legend>
    <div class="pair">
      <CountField {...field(`distance-${n}`)} label="Distance, m" />
      <ChoiceField {...named(`current-${n}`)} label="Water" as="list" options={ways} />
      {legField(fields, `current-${n}`) !== 'still' && (
        <CountField {...field(`size-${n}`)} label="How fast, m/s" parts />
      )}
      <CountField {...field(`cross-${n}`)} label="Across, m/s" parts />
    </div>
  </fieldset>
);

const ways = [
  { value: 'still', label: 'Still' },
  { value: 'with', label: 'Runs with' },
  { value: 'against', label: 'Runs against' },
];
