import { expect, test } from 'vitest';
import { gapsIn } from './doc-comments.js';
import { publicNames } from './surface.js';

test('there are public names to read', () => {
  expect(publicNames.length).toBeGreaterThan(40);
});

test.each(publicNames.map((name) => [name.name, name] as const))('%s is documented', (_, name) => {
  expect(gapsIn(name), `packages/core/src/${name.file}`).toEqual([]);
});
