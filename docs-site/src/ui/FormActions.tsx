import type { ComponentChildren } from 'preact';
import type { Fields } from './address';
import type { Form } from './use-form';

interface Props<F extends Fields> {
  readonly form: Form<F>;
  readonly example: F;
  /** What it leaves empty when a person starts anew. */
  readonly cleared: F;
  readonly children?: ComponentChildren;
}

/** The example, a clean start, and the way back from both: nothing typed is lost. */
export function FormActions<F extends Fields>({ form, example, cleared, children }: Props<F>) {
  return (
    <div class="actions">
      <button type="button" class="button quiet" onClick={() => form.replace(example)}>
        Show the example
      </button>
      <button type="button" class="button quiet" onClick={() => form.replace(cleared)}>
        Start empty
      </button>
      {children}
      {form.before.value && (
        <button type="button" class="button quiet" onClick={form.putBack}>
          Put back what stood here
        </button>
      )}
    </div>
  );
}
