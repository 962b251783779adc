import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { describe, expect, inject, test } from 'vitest';
import { type Entry, entries, namesOf } from '../repo/surface.js';
import { everyNode, run } from './pack.js';

const project = inject('project');
const installed = join(project, 'node_modules/backhalf');

test('the package holds what was meant to be published, and no more', () => {
  const files = globSync('**/*', { cwd: installed, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(installed.length + 1))
    .map((file) =>
      file.replaceAll('\\', '/').replace(/(?<=schemas\/)\w+(?=\.json$)|(?<=-)\w{8}(?=\.)/, '*'),
    );
  expect([...new Set(files)].sort()).toEqual(
    [
      'LICENSE',
      'README.md',
      // What both entry points share.
      'dist/chunk-*.js',
      'dist/splits-*.d.cts',
      'dist/splits-*.d.ts',
      'dist/schemas/*.json',
      ...['index', 'tables'].flatMap((name) =>
        ['js', 'cjs', 'd.ts', 'd.cts'].map((end) => `dist/${name}.${end}`),
      ),
      'package.json',
    ].sort(),
  );
});

test('it depends on nothing', () => {
  const { dependencies, peerDependencies } = JSON.parse(
    readFileSync(join(installed, 'package.json'), 'utf8'),
  );
  expect({ dependencies, peerDependencies }).toEqual({});
});

describe.each(everyNode())('on %s', (node) => {
  test.each(Object.keys(entries) as Entry[])(
    '%s: both module formats give out the same names',
    (entry) => {
      const names = namesOf(entry).filter(({ kind }) => kind !== 'type');
      const say = 'console.log(JSON.stringify(Object.keys(names).sort()))';
      const ways = [
        ['--input-type=module', '-e', `import * as names from '${entry}'; ${say}`],
        ['--input-type=commonjs', '-e', `const names = require('${entry}'); ${say}`],
      ];
      for (const way of ways) {
        expect(JSON.parse(run(node, way, project))).toEqual(names.map(({ name }) => name));
      }
    },
  );
});

test('publint has nothing to say', async () => {
  const { messages, pkg } = await publint({ pkgDir: installed, pack: false, strict: true });
  expect(messages.map((message) => formatMessage(message, pkg!))).toEqual([]);
});

test('the types are found, and are right, by every way to resolve a module', async () => {
  const tarball = createPackageFromTarballData(readFileSync(inject('tarball')));
  const result = await checkPackage(tarball);
  if (!result.types) throw new Error('The package has no types.');
  // "node10" is how Node 10 looked for modules: it knew no entry points beside the main one.
  const problems = result.problems.filter(
    (problem) => !('resolutionKind' in problem && problem.resolutionKind === 'node10'),
  );
  expect(problems).toEqual([]);
});
