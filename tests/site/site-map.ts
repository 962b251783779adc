import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../../docs-site/dist/', import.meta.url));

/** Every page that was built, as a path from the site's root: what the sitemap lists and what it hides. */
export function builtPages(): readonly string[] {
  const pages = globSync('**/*.html', { cwd: dist }).map((file) => {
    const path = file.replaceAll('\\', '/').replace(/(^|\/)index\.html$/, '$1');
    return `/${path}`;
  });
  if (pages.length < 10) throw new Error(`Only ${pages.length} pages were built.`);
  return pages.sort();
}

/** The HTML of a built page. */
export function htmlOf(path: string): string {
  return readFileSync(dist + (path.endsWith('/') ? `${path}index.html` : path).slice(1), 'utf8');
}
