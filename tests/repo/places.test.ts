import { beforeAll, expect, test } from 'vitest';
import { isUsed, madeByCallers, pages, reference, testOf } from './places.js';
import { publicNames } from './surface.js';

// Options and results are shown by the function they belong to; all else is used and tested by name.
const shown = publicNames.filter(({ kind, name }) => kind !== 'type' || madeByCallers.has(name));
let api: Awaited<ReturnType<typeof reference>>;
beforeAll(async () => {
  api = await reference();
}, 60_000);

test('each name is in the test that mirrors its file', () => {
  const missing = shown.filter((name) => !testOf(name).holds);
  expect(missing.map((name) => `${name.name} is not in ${testOf(name).path}`)).toEqual([]);
});

test('each name has a page in the reference', () => {
  expect(publicNames.map(({ name }) => name).filter((name) => !api.names.has(name))).toEqual([]);
});

test('the reference has no broken link and no type that is not given out', () => {
  expect(api.warnings).toEqual([]);
});

test('each name is used by a page written by hand', () => {
  expect(shown.filter((name) => !isUsed(name)).map(({ name }) => name)).toEqual([]);
});

test('no page says that it uses what is not there', () => {
  const names = new Set(publicNames.map(({ name }) => name));
  expect(pages.flatMap(({ uses }) => uses).filter((name) => !names.has(name))).toEqual([]);
});
