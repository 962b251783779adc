import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformSync } from 'esbuild';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { statedValue } from '../docs/examples.js';
import { root } from '../repo/surface.js';
import { everyNode, run } from './pack.js';

// What a newcomer copies first: the README's example, its results printed so that they can be read back.
const readme = readFileSync(`${root}README.md`, 'utf8');
const [, code = ''] = /^## First result.*?^```ts\n(.*?)^```/ms.exec(readme) ?? [];
const STATED = /^console\.log\((.+)\); \/\/ => (.+)$/gm;
const program = code.replace(STATED, 'console.log(JSON.stringify($1));');
const results = [...code.matchAll(STATED)].map(([, , stated = '']) => statedValue(stated));

const project = inject('project');
const files = {
  'first.mjs': program,
  'first.cjs': transformSync(program, { format: 'cjs' }).code,
  'first.mts': program,
  'first.cts': program,
};

beforeAll(() => {
  for (const [file, text] of Object.entries(files)) writeFileSync(join(project, file), text);
  const tsc = `${root}node_modules/typescript/bin/tsc`;
  const options = ['--module', 'nodenext', '--strict', '--outDir', 'compiled'];
  run(process.execPath, [tsc, ...options, 'first.mts', 'first.cts'], project);
});

test('the README states results', () => {
  expect(results.length).toBeGreaterThan(3);
});

describe.each(everyNode())('on %s', (node) => {
  test.each([
    ['an ES module', 'first.mjs'],
    ['CommonJS', 'first.cjs'],
    ['TypeScript to an ES module', 'compiled/first.mjs'],
    ['TypeScript to CommonJS', 'compiled/first.cjs'],
  ])('%s gives them', (_, file) => {
    const printed = run(node, [file], project).trim().split('\n');
    expect(printed.map((line) => JSON.parse(line))).toEqual(results);
  });
});
