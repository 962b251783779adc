import type { ComponentChildren } from 'preact';
import { AddressNotice } from './AddressNotice';
import type { Fields } from './address';
import type { Form } from './use-form';

interface Props<F extends Fields> {
  readonly form: Form<F>;
  /** What the fields cannot mend, beside what the address held. */
  readonly notices?: readonly string[];
  readonly class?: string;
  readonly children: ComponentChildren;
}

/** The box a calculator stands in, and above all what its address held and could not be used. */
export const Frame = <F extends Fields>({ form, notices = [], class: own, children }: Props<F>) => (
  <div
    class={['calculator', own, 'not-content', form.ownPage && 'own-page'].filter(Boolean).join(' ')}
    id={form.id}
  >
    <AddressNotice problems={[...form.addressProblems.value, ...notices]} />
    {children}
  </div>
);
