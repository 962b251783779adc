import { ChoiceField } from './ChoiceField';
import { CountField } from './CountField';
import type { PoolFields } from './pool-text';

interface Props {
  readonly id: string;
  readonly fields: PoolFields;
  readonly onValue: (name: keyof PoolFields, text: string) => void;
  readonly error: string | null;
}

/** The pool: one of the usual three, or any other by length and unit. */
export const PoolField = ({ id, fields, onValue, error }: Props) => (
  <>
    <ChoiceField
      id={`${id}-pool`}
      name="pool"
      label="Pool"
      options={pools}
      value={fields.pool}
      onValue={(text) => onValue('pool', text)}
    />
    {fields.pool === 'other' && (
      <div class="row">
        <CountField
          id={`${id}-length`}
          name="length"
          label="Length of the pool"
          hint="33,33 or 20"
          parts
          value={fields.length}
          onValue={(text) => onValue('length', text)}
          error={error}
        />
        <ChoiceField
          id={`${id}-unit`}
          name="unit"
          label="Unit"
          options={units}
          value={fields.unit}
          onValue={(text) => onValue('unit', text)}
        />
      </div>
    )}
  </>
);

const pools = [
  { value: '25yd', label: '25 yd' },
  { value: '25m', label: '25 m' },
  { value: '50m', label: '50 m' },
  { value: 'other', label: 'Other' },
];
const units = [
  { value: 'm', label: 'metres' },
  { value: 'yd', label: 'yards' },
];
