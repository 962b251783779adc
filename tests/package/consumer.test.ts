import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { root } from '../repo/surface.js';
import { run } from './pack.js';

const project = join(inject('project'), 'consumer');
cpSync(`${root}tests/types/consumer`, project, { recursive: true });
const tsc = (...options: string[]) =>
  run(
    process.execPath,
    [`${root}node_modules/typescript/bin/tsc`, '-p', project, ...options],
    project,
  );

test('other people’s declarations can name what they got, in both module formats', () => {
  expect(tsc()).toBe('');
});

test('a bundler resolves the types too', () => {
  expect(tsc('--module', 'preserve', '--moduleResolution', 'bundler')).toBe('');
});
