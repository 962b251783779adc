import { ChoiceField } from './ChoiceField';
import { CountField } from './CountField';
import type { PoolFields } from './pool-text';
import type { AnyForm } from './use-form';

interface Props {
  readonly form: AnyForm;
  readonly error: string | null;
  readonly label?: string;
  /** Stands before the fields' names, where a form has two pools: `to-`. */
  readonly prefix?: string;
}

/** The pool: one of the usual three, or any other by length and unit. */
export function PoolField({ form, error, label = 'Pool', prefix = '' }: Props) {
  const named = (name: keyof PoolFields) => form.field(prefix + name);
  const pool = named('pool');
  return (
    <>
      <ChoiceField {...pool} label={label} options={pools} />
      {pool.value === 'other' && (
        <div class="row">
          <CountField
            {...named('length')}
            label={`Length of the ${label.charAt(0).toLowerCase()}${label.slice(1)}`}
            hint="33,33 or 20"
            parts
            error={error}
          />
          <ChoiceField {...named('unit')} label="Unit" options={units} />
        </div>
      )}
    </>
  );
}

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
