/** What goes with one method's figures, in sentences. */
export interface MethodNote {
  readonly name: string;
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  /** Why figures are missing. */
  readonly lacks: readonly string[];
}

/** What each method takes for granted, and what to know before trusting it, side by side. */
export const MethodNotes = ({ notes }: { readonly notes: readonly MethodNote[] }) => (
  <div class="notes-beside">
    {notes.map(({ name, assumptions, cautions, lacks }) => (
      <section key={name} aria-label={name}>
        <p class="notes-title">{name}</p>
        <Sentences title="Takes for granted" lines={assumptions} />
        <Sentences title="Before you trust it" lines={cautions} />
        <Sentences title="No figure here" lines={lacks} />
      </section>
    ))}
  </div>
);

interface ListProps {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Each line once: estimates of one method repeat each other. */
const Sentences = ({ title, lines }: ListProps) =>
  lines.length === 0 ? null : (
    <>
      <p class="list-title">{title}</p>
      <ul>
        {[...new Set(lines)].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
