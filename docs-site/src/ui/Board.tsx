import type { ComponentChildren } from 'preact';
import type { Fields } from './address';
import type { Csv } from './csv';
import { FormActions } from './FormActions';
import { Frame } from './Frame';
import { type Errors, problemsOf, waitingFor } from './problems';
import { ResultCard } from './ResultCard';
import { ShareBar } from './ShareBar';
import type { Form } from './use-form';

interface Props<F extends Fields> {
  readonly form: Form<F>;
  readonly errors: Errors;
  readonly example: F;
  /** What a clean start leaves empty. */
  readonly cleared: F;
  /** The fields. */
  readonly children: ComponentChildren;
  /** None while something is wrong. */
  readonly answer: ComponentChildren;
  /** What is said while there is no answer, as `The plan appears`. */
  readonly awaited: string;
  /** What takes the whole width below. */
  readonly below?: ComponentChildren;
  /** Where these fields stand in the calculator on its own page. */
  readonly href: string;
  readonly csv: Csv | null;
  readonly class?: string;
}

/** A calculator: its fields, its answer beside them, and what can be done with it. */
export function Board<F extends Fields>(props: Props<F>) {
  const { form, errors, example, cleared, children, answer, awaited, below, href, csv } = props;
  const problems = problemsOf(form.id, errors);
  return (
    <Frame form={form} {...(props.class !== undefined && { class: props.class })}>
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          {children}
          <FormActions form={form} example={example} cleared={cleared} />
        </form>
        {answer ?? (
          <ResultCard headline={null} sentence="" waiting={waitingFor(awaited, problems)} />
        )}
      </div>
      {below}
      <ShareBar href={href} problems={problems} csv={csv} />
    </Frame>
  );
}
