import { globSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Example, examplesInComments, examplesInFences } from './examples.js';

export const root = fileURLToPath(new URL('../..', import.meta.url));

const files = (pattern: string | string[]) =>
  globSync(pattern, { cwd: root }).map((file) => root + file);

/** Every example of the doc comments and of the pages written by hand. */
export const everyExample: readonly Example[] = [
  ...files('packages/core/src/**/*.ts').flatMap(examplesInComments),
  ...files([
    'README.md',
    'DEVELOPERS.md',
    'docs-site/src/content/docs/*.mdx',
    'docs-site/src/content/docs/{calculators,learn,explain,library}/**/*.{md,mdx}',
  ]).flatMap(examplesInFences),
];
