import { globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import { expect, test } from 'vitest';
import { entries, source } from './surface.js';

// From the ground up; files beside the entry points are the ground.
const FLOORS = ['.', 'time', 'course', 'splits', 'sets', 'projection', 'plan', 'tables'];
const ENTRIES: readonly string[] = Object.values(entries);
// Built into `backhalf/tables`, so that the package depends on nothing.
const BUILT_IN = ['papaparse'];

// A folder inside a floor's folder stands on the same floor.
const floorOf = (file: string) => FLOORS.indexOf(dirname(file).split('/')[0] ?? '');

const files = globSync('**/*.ts', { cwd: source }).map((file) => file.replaceAll('\\', '/'));
const imports = new Map(
  files
    .filter((file) => !ENTRIES.includes(file))
    .map((file) => {
      const text = readFileSync(source + file, 'utf8');
      const found = [...text.matchAll(/^(?:import|\}|export) ?(type )?[^'\n]*from '([^']+)';$/gm)];
      return [
        file,
        found.map(([, type, path = '']) => ({ path, isType: type !== undefined })),
      ] as const;
    }),
);
const target = (file: string, path: string) => join(dirname(file), path).replace(/\.js$/, '.ts');
const edges = [...imports].flatMap(([file, found]) =>
  found
    .filter(({ path }) => !(file.startsWith('tables/') && BUILT_IN.includes(path)))
    .map(({ path, isType }) => ({ file, path, isType, to: target(file, path) })),
);

test('every file stands on a floor', () => {
  expect(files.length).toBeGreaterThan(20);
  expect(files.filter((file) => floorOf(file) < 0)).toEqual([]);
});

test('the library imports nothing but its own files', () => {
  const strange = edges.filter(({ path, to }) => !path.startsWith('.') || !files.includes(to));
  expect(strange.map(({ file, path }) => `${file} imports ${path}`)).toEqual([]);
});

test('a file imports from its own floor or from floors below', () => {
  const upward = edges.filter(
    ({ file, to }) => floorOf(to) > floorOf(file) || ENTRIES.includes(to),
  );
  expect(upward.map(({ file, to }) => `${file} reaches up to ${to}`)).toEqual([]);
});

test('no file imports itself in a circle, but for types', () => {
  const next = (file: string) =>
    edges.filter((edge) => edge.file === file && !edge.isType).map(({ to }) => to);
  const circles = files.filter((file) => {
    const seen = new Set<string>();
    const queue = next(file);
    for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
      if (!seen.has(at)) queue.push(...next(at));
      seen.add(at);
    }
    return seen.has(file);
  });
  expect(circles).toEqual([]);
});
