import { createHash } from 'node:crypto';
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { build } from 'esbuild';

/** Kept only once they were visited: the reference, the search index, what stands in other pages. */
const onDemand = /^(api|pagefind|embed|states)\/|\.(xml|txt)$/;

/** Writes the worker that keeps pages, scripts and styles at hand without a network. */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const files = globSync('**/*.*', { cwd: root })
          .map((file) => file.replaceAll('\\', '/'))
          .filter((file) => !onDemand.test(file))
          .sort();
        // By their content: what a new version left as it was is not fetched again.
        const list = files.map((file) => ({
          url: `/${file.replace(/(^|\/)index\.html$/, '$1')}`,
          revision: createHash('sha256')
            .update(readFileSync(root + file))
            .digest('hex')
            .slice(0, 16),
        }));
        await build({
          entryPoints: [fileURLToPath(new URL('./worker.js', import.meta.url))],
          outfile: `${root}sw.js`,
          bundle: true,
          minify: true,
          target: 'es2022',
          define: { FILES: JSON.stringify(list), 'process.env.NODE_ENV': '"production"' },
        });
      },
    },
  };
}
