/** The texts of a calculator's fields, by name: all that it knows, and all that its address holds. */
export type Fields = Readonly<Record<string, string>>;

/** For each field the texts it may hold, where it is a choice; `any` where a person types. */
export type Shape<F extends Fields> = { readonly [K in keyof F]: 'any' | readonly string[] };

export interface AddressReading<F extends Fields> {
  readonly fields: F;
  /** One sentence for each thing in the address that could not be used. */
  readonly problems: readonly string[];
}

const version = '1';

/** The part of an address after the question mark that brings these fields back. */
export function queryOf(fields: Fields): string {
  return new URLSearchParams([['v', version], ...Object.entries(fields)]).toString();
}

/**
 * Reads fields back out of an address, or nothing where the address holds no state. What is unknown
 * is passed over, what is missing keeps its initial text, and what will not do is named.
 */
export function readQuery<F extends Fields>(
  query: string,
  initial: F,
  shape: Shape<F>,
): AddressReading<F> | null {
  const given = new URLSearchParams(query);
  if (!given.has('v')) return null;
  const problems: string[] = [];
  if (given.get('v') !== version) {
    problems.push(
      'This address was written by another version of the calculator; check what each field says.',
    );
  }
  const read = Object.entries(initial).map(([name, usual]) => {
    const text = given.get(name) ?? usual;
    const choices = shape[name] ?? 'any';
    if (choices === 'any' || choices.includes(text)) return [name, text];
    problems.push(
      `The address says “${name}=${text.slice(0, 40)}”, which is no choice here; “${usual}” stands instead, and the rest was kept.`,
    );
    return [name, usual];
  });
  return { fields: Object.fromEntries(read) as F, problems };
}

/**
 * Calls `act` with the latest value, at once and then at most every `interval` milliseconds: a
 * browser refuses an address that changes with every key.
 */
export function throttled<T>(act: (value: T) => void, interval = 500): (value: T) => void {
  let waiting = false;
  let latest: { readonly value: T } | undefined;
  const fire = () => {
    waiting = latest !== undefined;
    if (latest === undefined) return;
    setTimeout(fire, interval);
    const { value } = latest;
    latest = undefined;
    act(value);
  };
  return (value) => {
    latest = { value };
    if (!waiting) fire();
  };
}
