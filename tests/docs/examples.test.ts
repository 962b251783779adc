import { globSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  examplesInComments,
  examplesInFences,
  holds,
  rewrite,
  run,
  statedValue,
} from './examples.js';

// UPDATE_EXAMPLES=1 writes the true values in place of the stated ones; read the diff.
const update = process.env['UPDATE_EXAMPLES'] === '1';
const root = fileURLToPath(new URL('../..', import.meta.url));
const files = (pattern: string | string[]) =>
  globSync(pattern, { cwd: root }).map((file) => root + file);

const examples = [
  ...files('packages/core/src/**/*.ts').flatMap(examplesInComments),
  ...files([
    'README.md',
    'DEVELOPERS.md',
    'docs-site/src/content/docs/*.mdx',
    'docs-site/src/content/docs/{calculators,learn,explain,library}/**/*.{md,mdx}',
  ]).flatMap(examplesInFences),
];

describe('every example gives what it states', () => {
  test('there are examples to run', () => {
    expect(examples.length).toBeGreaterThan(20);
  });

  test.each(
    examples.map(
      (example) => [`${example.file.slice(root.length)}:${example.line}`, example] as const,
    ),
  )('%s', (_, example) => {
    for (const { line, stated, actual } of run(example)) {
      if (update && !holds(stated, actual)) rewrite(example.file, line, actual);
      else expect(actual, `line ${line}`).toEqual(statedValue(stated));
    }
  });
});
