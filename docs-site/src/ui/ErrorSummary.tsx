import { useEffect, useRef } from 'preact/hooks';

/** What is wrong, and the id of the field that would mend it, where there is one. */
export interface Problem {
  readonly id: string | null;
  readonly message: string;
}

/** Everything that is wrong, after an action that needs it right. Takes the focus when it appears. */
export function ErrorSummary({
  title = 'Something to put right first',
  problems,
}: {
  readonly title?: string;
  readonly problems: readonly Problem[];
}) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => box.current?.focus(), []);
  return (
    <div class="summary" role="alert" tabIndex={-1} ref={box}>
      <p class="summary-title">{title}</p>
      <ul>
        {problems.map(({ id, message }) => (
          <li key={message}>
            {id === null ? (
              message
            ) : (
              <a
                href={`#${id}`}
                onClick={(event) => {
                  event.preventDefault();
                  goTo(id);
                }}
              >
                {message}
              </a>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Brings the label into view, then the focus to its field. */
function goTo(id: string): void {
  const field = document.getElementById(id);
  document.querySelector(`label[for="${CSS.escape(id)}"]`)?.scrollIntoView({ block: 'center' });
  const target = field?.matches('fieldset') ? field.querySelector('input') : field;
  target?.focus({ preventScroll: true });
}
