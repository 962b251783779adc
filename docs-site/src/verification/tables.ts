import type { Reference } from '../../../tests/reference/reference';

type Any = Reference<unknown, unknown>;

const modules = import.meta.glob('../../../tests/reference/data/*.ts', { eager: true });

const isReference = (value: unknown): value is Any =>
  typeof value === 'object' && value !== null && 'rows' in value && 'compute' in value;

/** Every table the reference tests read, by its title. */
export const tables: readonly Any[] = Object.values(modules)
  .flatMap((module) => Object.values(module as object))
  .filter(isReference)
  .sort((a, b) => a.title.localeCompare(b.title, 'en'));

/** How well the published values of a table are known, in words. */
export const standings: Readonly<Record<Any['standing'], string>> = {
  read: 'Read in the source.',
  quoted: 'As another text quotes the source.',
  'open data': 'Worked out from open data.',
  'common practice': 'Common practice among coaches; no source.',
  worked: 'Worked by hand from the rule or formula named: it checks the arithmetic, not the world.',
  'from memory': 'From memory, not read in the source.',
};

/** A row as text: input, published value, ours, and how far apart they are. */
export function rowText({ compute, show }: Any, input: unknown, published: unknown) {
  const ours = compute(input);
  const text = show ?? plain;
  return {
    input: text(input),
    published: text(published),
    ours: text(ours),
    difference: differenceText(published, ours),
  };
}

function plain(value: unknown): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(Number(value.toPrecision(12)));
  if (Array.isArray(value)) return value.map(plain).join(' · ');
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .map(
      ([name, of]) =>
        `${name} ${typeof of === 'object' && of !== null ? `(${plain(of)})` : plain(of)}`,
    )
    .join(', ');
}

/** The largest difference between any two numbers that should be equal; none where they are text. */
function differenceText(published: unknown, ours: unknown): string {
  const pairs = numbersOf(published).map((n, i) =>
    Math.abs(n - (numbersOf(ours)[i] ?? Number.NaN)),
  );
  if (pairs.length === 0) return plain(published) === plain(ours) ? 'none' : 'differs';
  const largest = Math.max(...pairs);
  return largest === 0 ? 'none' : largest.toExponential(1).replace('-', '−');
}

function numbersOf(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersOf);
  return [];
}
