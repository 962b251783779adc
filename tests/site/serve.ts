import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { preview } from 'astro';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built site is served. */
    site: string;
  }
}

const root = fileURLToPath(new URL('../../docs-site/', import.meta.url));

/** Serves the built site for as long as the browser tests run. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(`${root}dist/index.html`)) {
    throw new Error('The site is not built; run npm run build first (npm test does).');
  }
  const server = await preview({
    root,
    server: { port: 4391, host: 'localhost' },
    logLevel: 'error',
  });
  project.provide('site', `http://localhost:${server.port}`);
  return () => server.stop();
}
