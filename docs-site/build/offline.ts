import { createHash } from 'node:crypto';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Kept only once they were visited: the reference, the search index, what stands in other pages. */
const onDemand = /^(api|pagefind|embed|states)\/|\.(xml|txt)$/;

/** Writes the worker that keeps pages, scripts and styles at hand without a network. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': ({ dir }) => {
        const root = fileURLToPath(dir);
        const files = globSync('**/*.*', { cwd: root })
          .map((file) => file.replaceAll('\\', '/'))
          .filter((file) => !onDemand.test(file))
          .sort();
        const sum = createHash('sha256');
        for (const file of files) sum.update(file).update(readFileSync(root + file));
        const paths = files.map((file) => `/${file.replace(/(^|\/)index\.html$/, '$1')}`);
        const worker = readFileSync(new URL('./worker.js', import.meta.url), 'utf8')
          .replace('__VERSION__', sum.digest('hex').slice(0, 16))
          .replace("['__FILES__']", JSON.stringify(paths));
        writeFileSync(`${root}sw.js`, worker);
      },
    },
  };
}
