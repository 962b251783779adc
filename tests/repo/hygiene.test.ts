import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { root } from './surface.js';

const SELF = 'tests/repo/hygiene.test.ts';
const TEXT = /\.(ts|tsx|js|mjs|cjs|mts|cts|astro|md|mdx|json|css|csv|html|svg|yml)$/;

const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' }).split(
  '\0',
);
const files = tracked
  .filter((file) => TEXT.test(file) && file !== SELF && file !== 'package-lock.json')
  .map((file) => ({ file, lines: readFileSync(root + file, 'utf8').split('\n') }));

/** Where a pattern stands, as `file:line text`. */
function found(pattern: RegExp, within: (file: string) => boolean = () => true): readonly string[] {
  return files
    .filter(({ file }) => within(file))
    .flatMap(({ file, lines }) =>
      lines.flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [])),
    );
}

test('there are files to read', () => {
  expect(files.length).toBeGreaterThan(100);
});

test('no file names a place on somebody’s machine', () => {
  expect(found(/(^|[\s"'`(=])(\/(work|tmp|home|root|Users)\/|[A-Z]:\\Users)/)).toEqual([]);
});

test('nothing is left for later', () => {
  expect(found(/\b(TODO|FIXME|XXX|HACK)\b/)).toEqual([]);
});

test('no test is skipped, singled out or tried again', () => {
  const isTest = (file: string) => file.startsWith('tests/') || file === 'vitest.config.ts';
  expect(found(/\b(test|it|describe)\.(skip|only|todo|fails|skipIf|runIf)\b/, isTest)).toEqual([]);
  expect(found(/\bretry\s*:|\bxit\(|\bxdescribe\(/, isTest)).toEqual([]);
});

test('no check is silenced, but where the compiler’s complaint is the point', () => {
  expect(found(/biome-ignore|eslint-disable|@ts-ignore|@ts-nocheck|c8 ignore|v8 ignore/)).toEqual(
    [],
  );
  expect(found(/@ts-expect-error/, (file) => !file.startsWith('tests/types/'))).toEqual([]);
});
