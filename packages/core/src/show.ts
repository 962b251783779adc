const LONGEST = 40;

/** Any value in a few readable characters, for a message. Never throws, never runs foreign code. */
export function show(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return `"${value.length > LONGEST ? `${value.slice(0, LONGEST)}…` : value}"`;
    case 'bigint':
      return 'a big integer';
    case 'symbol':
      return 'a symbol';
    case 'function':
      return 'a function';
    case 'object':
      // Nothing is read off the object: a proxy or a getter could throw.
      return value === null ? 'null' : 'an object';
    default:
      return String(value).replace('-', '−');
  }
}
