import { readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/**
 * What a page's own policy, a meta tag with the hashes of its scripts and styles, cannot say: who may
 * frame it. A browser holds to both.
 */
const policy = (ancestors: string) =>
  `Content-Security-Policy: object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors ${ancestors}`;

const everywhere = [
  'X-Content-Type-Options: nosniff',
  'Referrer-Policy: no-referrer',
  'Permissions-Policy: camera=(), geolocation=(), microphone=()',
];

/**
 * Writes `_headers`, which many static hosts read. Two matching rules would both hold, so `/embed/`,
 * made to stand in other people's pages, is kept apart by naming every other folder.
 */
export function headersFile(): AstroIntegration {
  return {
    name: 'headers-file',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const root = fileURLToPath(dir);
        const entries = readdirSync(root, { withFileTypes: true }).filter(
          (e) => e.name !== 'embed',
        );
        const paths = entries.map((e) => (e.isDirectory() ? `/${e.name}/*` : `/${e.name}`));
        const rule = (path: string, lines: string[]) =>
          [path, ...lines.map((l) => `  ${l}`)].join('\n');
        const rules = [
          rule('/*', everywhere),
          ...['/', ...paths.sort()].map((path) => rule(path, [policy("'none'")])),
          rule('/embed/*', [policy('*')]),
        ];
        writeFileSync(`${root}/_headers`, `${rules.join('\n')}\n`);
      },
    },
  };
}
