import type { Method } from './methods';

/** What each method takes for granted, and what to know before trusting it. */
export function Notes({ methods }: { readonly methods: readonly Method[] }) {
  const families = [...new Set(methods.map(({ family }) => family))];
  return (
    <div class="method-notes">
      {families.map((family) => {
        const own = methods.filter((method) => method.family === family);
        const found = own.flatMap(({ estimate }) => estimate ?? []);
        return (
          <section key={family} aria-label={family}>
            <p class="method-title">{family}</p>
            <List title="Takes for granted" lines={found.flatMap((it) => it.assumptions)} />
            <List
              title="Before you trust it"
              lines={found.flatMap((it) => it.cautions.map(({ message }) => message))}
            />
            <List title="No figure here" lines={lackingIn(own)} />
          </section>
        );
      })}
    </div>
  );
}

/** Why there is no figure; by name where some of the family have one. */
const lackingIn = (own: readonly Method[]): readonly string[] =>
  own.flatMap(({ name, lacks }) => {
    if (lacks === null) return [];
    return own.some(({ estimate }) => estimate) ? `${name}: ${lacks}` : lacks;
  });

interface ListProps {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Each line once: methods of a family repeat each other. */
const List = ({ title, lines }: ListProps) =>
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
