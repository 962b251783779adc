const LONGEST = 40;
const UNSEEN = /[\p{C}\p{Zl}\p{Zp}]+/gu; // line ends, controls, marks that turn the text around, half a character

/** Any value in a few readable characters, for a message. Never throws, never runs foreign code. */
export function show(value: unknown): string {
  switch (typeof value) {
    case 'string': {
      const start = value.length > LONGEST ? `${value.slice(0, LONGEST)}…` : value;
      return `"${start.replace(UNSEEN, ' ')}"`;
    }
    case 'bigint':
      return 'a big integer';
    case 'symbol':
      return 'a symbol';
    case 'function':
      return 'a function';
    case 'object':
      // Nothing is read off the object: a proxy or a getter could throw.
      return value === null ? 'null' : isList(value) ? 'a list' : 'an object';
    default:
      return String(value).replaceAll('-', '−');
  }
}

function isList(value: object): boolean {
  try {
    return Array.isArray(value);
  } catch {
    return false; // a proxy that was revoked
  }
}
