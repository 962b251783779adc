import { createHash } from 'node:crypto';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const all = (html: string, pattern: RegExp) => [
  ...new Set([...html.matchAll(pattern)].map((match) => hash(match[1] ?? ''))),
];

/**
 * Completes the policy in each built page. Astro hashes the scripts and styles that it bundles; a few
 * inline ones of the theme and of components pass it by and would be refused, so their hashes are
 * added here. Nothing is allowed that does not stand in the page itself.
 */
export function withInlineHashes(html: string): string {
  const scripts = all(html, /<script(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g);
  const styles = all(html, /<style[^>]*>([\s\S]*?)<\/style>/g);
  const attributes = all(html, /\sstyle="([^"]*)"/g);
  const add = (policy: string, directive: string, hashes: readonly string[]) =>
    policy.replace(new RegExp(`${directive} [^;]*`), (list) =>
      [list.trim(), ...hashes.filter((source) => !list.includes(source))].join(' '),
    );
  return html.replace(
    /(<meta http-equiv="content-security-policy" content=")([^"]*)/,
    (_, tag: string, policy: string) => {
      const whole = add(add(policy, 'script-src', scripts), 'style-src', styles);
      const onTags = attributes.length > 0 ? `'unsafe-hashes' ${attributes.join(' ')}` : "'none'";
      return `${tag}${whole.replace(/;?\s*$/, '')}; style-src-attr ${onTags};`;
    },
  );
}

export function pagePolicy(): AstroIntegration {
  return {
    name: 'page-policy',
    hooks: {
      'astro:build:done': ({ dir }) => {
        for (const page of globSync('**/*.html', { cwd: fileURLToPath(dir) })) {
          const file = new URL(page, dir);
          writeFileSync(file, withInlineHashes(readFileSync(file, 'utf8')));
        }
      },
    },
  };
}
