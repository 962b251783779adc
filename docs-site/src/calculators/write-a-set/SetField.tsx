import { described, FieldFrame, plainText } from '~/ui/FieldFrame';
import type { Bound } from '~/ui/use-form';
import { useLateError } from '~/ui/use-late-error';
import type { Slip } from './slip';

interface Props extends Bound {
  readonly error: string | null;
  readonly slip: Slip | null;
}

const hint = 'As on a handout: 10 x 100 on 1:30, 8 x 50 r 15, 3 x (4 x 100 on 1:30 + 200 easy).';

/** The set, and a mark below the character that could not be read. */
export function SetField({ id, name, value, onValue, error, slip }: Props) {
  const message = error !== null && slip !== null ? `${slip.place}: ${error}` : error;
  const late = useLateError(message, value);
  return (
    <div>
      <FieldFrame id={id} label="The set" hint={hint} error={late.shown}>
        <textarea
          {...plainText}
          {...described(id, { hint, error: late.shown })}
          id={id}
          name={name}
          class="times notation"
          rows={8}
          value={value}
          onInput={(event) => onValue(event.currentTarget.value)}
          onBlur={late.onBlur}
        />
      </FieldFrame>
      {slip && (
        <pre class="slip" aria-hidden="true">
          {`${slip.line}\n${slip.mark}`}
        </pre>
      )}
    </div>
  );
}
