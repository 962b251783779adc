import { described, FieldFrame, plainText } from './FieldFrame';
import type { Bound } from './use-form';
import { useLateError } from './use-late-error';

interface Props extends Bound {
  /** Says the unit too: “Length of the pool, metres”. */
  readonly label: string;
  readonly hint?: string;
  readonly error?: string | null;
  /** Whether a part of one will do, so that the keypad needs a point. */
  readonly parts?: boolean;
}

/** A count, or a length in the unit its label names. */
export function CountField({ id, name, label, hint, value, onValue, error, parts }: Props) {
  const late = useLateError(error, value);
  return (
    <FieldFrame id={id} label={label} hint={hint} error={late.shown}>
      <input
        {...plainText}
        {...described(id, { hint, error: late.shown })}
        id={id}
        name={name}
        class="count"
        type="text"
        inputmode={parts ? 'decimal' : 'numeric'}
        value={value}
        onInput={(event) => onValue(event.currentTarget.value)}
        onBlur={late.onBlur}
      />
    </FieldFrame>
  );
}
