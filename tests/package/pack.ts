import { spawnSync } from 'node:child_process';
import { globSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';

const root = fileURLToPath(new URL('../..', import.meta.url));

declare module 'vitest' {
  export interface ProvidedContext {
    /** The package as it would be published. */
    tarball: string;
    /** An empty project with nothing but that package installed. */
    project: string;
  }
}

/** Builds and packs the library once for all tests of the package. */
export default function setup({ provide }: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'backhalf-'));
  run('npm', ['run', '--silent', 'build'], join(root, 'packages/core'));
  run('npm', ['pack', '--silent', '--pack-destination', folder], join(root, 'packages/core'));
  const [tarball] = globSync('*.tgz', { cwd: folder }).map((name) => join(folder, name));
  if (tarball === undefined) throw new Error('npm pack made no tarball.');

  const project = join(folder, 'project');
  mkdirSync(project);
  writeFileSync(join(project, 'package.json'), '{ "name": "empty", "private": true }');
  installIn(project, tarball);
  provide('tarball', tarball);
  provide('project', project);
  return () => rmSync(folder, { recursive: true });
}

/** Installs the tarball in a project, with no need of a network: the package depends on nothing. */
export function installIn(project: string, tarball: string): void {
  const quiet = ['--offline', '--no-audit', '--no-fund', '--no-package-lock', '--loglevel=error'];
  run('npm', ['install', ...quiet, tarball], project);
}

/** What a command writes; an error where it fails. */
export function run(command: string, args: readonly string[], cwd: string): string {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (status === 0) return stdout;
  throw new Error(`${command} ${args.join(' ')}\n${stdout}${stderr}${error ?? ''}`);
}

/** Every Node there is: the one that runs this, and the system's own where it is another. */
export function everyNode(): readonly string[] {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const nodes = folders
    .filter((folder) => !/node_modules[\\/]\.bin/.test(folder))
    .map((folder) => join(folder, process.platform === 'win32' ? 'node.exe' : 'node'))
    .filter((node) => spawnSync(node, ['--version']).status === 0);
  return [process.execPath, ...nodes.slice(0, 1)];
}
