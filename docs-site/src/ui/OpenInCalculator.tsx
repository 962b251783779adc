import type { ComponentChildren } from 'preact';

interface Props {
  /** The calculator's address with the example's state in it. */
  readonly href: string;
  readonly children: ComponentChildren;
}

/** From an example to the calculator, with all that the example holds. */
export const OpenInCalculator = ({ href, children }: Props) => (
  <p class="open-in not-content">
    <a class="button quiet" href={href}>
      {children}
    </a>
  </p>
);
