import { described, FieldFrame, plainText } from '~/ui/FieldFrame';
import type { Bound } from '~/ui/use-form';
import { useLateError } from '~/ui/use-late-error';

interface Props extends Bound {
  readonly label: string;
  readonly hint: string;
  readonly error: string | null;
}

/** A set in set notation. */
export function SetField({ id, name, label, hint, value, onValue, error }: Props) {
  const late = useLateError(error, value);
  return (
    <FieldFrame id={id} label={label} hint={hint} error={late.shown}>
      <textarea
        {...plainText}
        {...described(id, { hint, error: late.shown })}
        id={id}
        name={name}
        class="set-text"
        rows={2}
        value={value}
        onInput={(event) => onValue(event.currentTarget.value)}
        onBlur={late.onBlur}
      />
    </FieldFrame>
  );
}
