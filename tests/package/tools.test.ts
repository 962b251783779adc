import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../repo/surface.js';
import { run } from './pack.js';

// What `npm run check` runs, so that a red check is a red test.
const tool = (path: string, ...args: string[]) =>
  run(process.execPath, [join(root, 'node_modules', path), ...args], root);

test('Biome finds nothing to format or mend', () => {
  tool('@biomejs/biome/bin/biome', 'check', '.');
});

test.each(['packages/core', '.', 'docs-site'])('TypeScript accepts %s', (project) => {
  expect(tool('typescript/bin/tsc', '--noEmit', '-p', project)).toBe('');
});

test('Knip finds no file, export or dependency that nobody uses', () => {
  tool('knip/bin/knip.js', '--no-progress', '--no-config-hints');
});
