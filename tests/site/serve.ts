import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { preview } from 'astro';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built site is served. */
    site: string;
    /** The same site on another port: another origin, for pages that embed it. */
    elsewhere: string;
  }
}

const root = fileURLToPath(new URL('../../docs-site/', import.meta.url));

/** Serves the built site on two ports for as long as the browser tests run. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(`${root}dist/index.html`)) {
    throw new Error('The site is not built; run npm run build first (npm test does).');
  }
  const servers = [await preview(on(4391)), await preview(on(4392))];
  const [site, elsewhere] = servers.map(({ port }) => `http://localhost:${port}`);
  project.provide('site', site ?? '');
  project.provide('elsewhere', elsewhere ?? '');
  return async () => {
    await Promise.all(servers.map((server) => server.stop()));
  };
}

const on = (port: number) => ({
  root,
  server: { port, host: 'localhost' },
  logLevel: 'error' as const,
});
