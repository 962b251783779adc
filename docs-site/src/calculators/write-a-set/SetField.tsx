import { NotationField } from '~/ui/NotationField';
import type { Bound } from '~/ui/use-form';
import type { Slip } from './slip';

interface Props extends Bound {
  readonly error: string | null;
  readonly slip: Slip | null;
}

const hint = 'As on a handout: 10 x 100 on 1:30, 8 x 50 r 15, 3 x (4 x 100 on 1:30 + 200 easy).';

/** The set, and a mark below the character that could not be read. */
export function SetField({ error, slip, ...bound }: Props) {
  const message = error !== null && slip !== null ? `${slip.place}: ${error}` : error;
  return (
    <div>
      <NotationField
        {...bound}
        label="The set"
        hint={hint}
        error={message}
        lines={8}
        class="times notation"
      />
      {slip && (
        <pre class="slip" aria-hidden="true">
          {`${slip.line}\n${slip.mark}`}
        </pre>
      )}
    </div>
  );
}
