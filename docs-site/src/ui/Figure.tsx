import type { ComponentChildren } from 'preact';

interface Props {
  /** What is shown, in a few words. */
  readonly label: string;
  readonly children: ComponentChildren;
}

/** A picture with the table beside it, under one label; no script needed. */
export const Figure = ({ label, children }: Props) => (
  <figure class="figure-box not-content">
    <figcaption>{label}</figcaption>
    {children}
  </figure>
);
