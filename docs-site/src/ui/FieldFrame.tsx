import type { ComponentChildren } from 'preact';

interface Props {
  readonly id: string;
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong and what would do; shown between the label and the field. */
  readonly error?: string | null | undefined;
  /** How the field's text was read. */
  readonly said?: string | null | undefined;
  readonly children: ComponentChildren;
}

/** Label, hint, error, the field itself, and how it was read, in that order. */
export function FieldFrame({ id, label, hint, error, said, children }: Props) {
  return (
    <div class={error ? 'field bad' : 'field'}>
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error && <FieldError id={id} message={error} />}
      {children}
      {said && (
        <p class="said" id={`${id}-said`}>
          {said}
        </p>
      )}
    </div>
  );
}

export const FieldError = ({ id, message }: { readonly id: string; readonly message: string }) => (
  <p class="error" id={`${id}-error`}>
    <span class="sr-only">Error: </span>
    {message}
  </p>
);

/** The attributes that tie a field to its hint, its error and how it was read. */
export function described(
  id: string,
  { hint, error, said }: Pick<Props, 'hint' | 'error' | 'said'>,
): { 'aria-describedby'?: string; 'aria-invalid'?: 'true' } {
  const parts = [hint && `${id}-hint`, error && `${id}-error`, said && `${id}-said`].filter(
    Boolean,
  );
  return {
    ...(parts.length > 0 && { 'aria-describedby': parts.join(' ') }),
    ...(error && { 'aria-invalid': 'true' }),
  };
}

/** What every typed field has: no guessing, correcting or capitals by the browser. */
export const plainText = {
  autocomplete: 'off',
  autocapitalize: 'off',
  autocorrect: 'off',
  spellcheck: false,
} as const;
