import type { measure } from './measure.js';

/** The source of the constants file, as it stands in the library. */
export function sourceOf({ exponentsSeen, fitsSeen }: ReturnType<typeof measure>): string {
  return `// Written by tests/reference/track-record with UPDATE_TRACK_RECORD=1; not by hand. The best times of
// each swimmer at one of the Olympic Games of 2000, 2004, 2008 and 2016 (official results, freestyle,
// 50 m pool), by the open dataset swimset. \`covered\`: swims in the 90 % range of the other Games alone.

/** Exponents of the power law through one swimmer's best times at two distances in metres. */
export const EXPONENTS_SEEN = [
${exponentsSeen.map(lineOf).join('\n')}
] as const;

/** ln(swum / estimated) for methods fitted to two distances in metres. */
export const FITS_SEEN = [
${fitsSeen.map(lineOf).join('\n')}
] as const;
`;
}

function lineOf(row: Readonly<Record<string, unknown>>): string {
  const fields = Object.entries(row).map(([key, value]) => `    ${key}: ${textOf(value)},`);
  return ['  {', ...fields, '  },'].join('\n');
}

function textOf(value: unknown): string {
  if (Array.isArray(value)) return `[${value.join(', ')}]`;
  return typeof value === 'string' ? `'${value}'` : String(value);
}
