import { described, FieldFrame, plainText } from './FieldFrame';
import type { Bound } from './use-form';
import { useLateError } from './use-late-error';

interface Props extends Bound {
  readonly label: string;
  readonly hint: string;
  readonly error: string | null;
  /** How many lines it shows before it scrolls, a count. */
  readonly lines: number;
  readonly class: string;
}

/** A set in set notation. */
export function NotationField(props: Props) {
  const { id, name, label, hint, value, onValue, error, lines } = props;
  const late = useLateError(error, value);
  return (
    <FieldFrame id={id} label={label} hint={hint} error={late.shown}>
      <textarea
        {...plainText}
        {...described(id, { hint, error: late.shown })}
        id={id}
        name={name}
        class={props.class}
        rows={lines}
        value={value}
        onInput={(event) => onValue(event.currentTarget.value)}
        onBlur={late.onBlur}
      />
    </FieldFrame>
  );
}
