import { spawn } from 'node:child_process';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { hundredths, SCM, splitsFromLaps } from 'backhalf';
import { build } from 'esbuild';
import { createElement } from 'react';
import { renderToString } from 'react-dom/server';
import { compile } from 'svelte/compiler';
import { render } from 'svelte/server';
import { describe, expect, inject, test } from 'vitest';
import { root } from '../repo/surface.js';
import { everyNode, installIn, run } from './pack.js';

/** A copy of an example with the packed library installed, as a developer would have it. */
function copyOf(name: string): string {
  const project = join(inject('project'), name);
  cpSync(`${root}examples/${name}`, project, { recursive: true });
  // What else an example depends on is taken from this repository, so that no network is needed.
  const file = join(project, 'package.json');
  const { dependencies, ...manifest } = JSON.parse(readFileSync(file, 'utf8'));
  writeFileSync(
    file,
    JSON.stringify({ ...manifest, dependencies: { backhalf: dependencies.backhalf } }),
  );
  installIn(project, inject('tarball'));
  return project;
}

describe.each(everyNode())('on %s', (node) => {
  test('batch reads every set, in several threads', () => {
    const output = run(node, ['batch.js', '1000'], copyOf('batch'));
    // Twice 32.50 to 34.49, fifteen times.
    expect(output.trim()).toBe(`1000 sets read, from ${30 * 3250} to ${30 * 3449} hundredths`);
  });

  test('server answers a set with its reading, and a slip with its sentence', async () => {
    const server = spawn(node, ['server.js'], {
      cwd: copyOf('server'),
      env: { ...process.env, PORT: '0' },
    });
    try {
      const address = await new Promise<string>((said) => {
        server.stdout.once('data', (data) => said(String(data).trim()));
      });
      const post = (body: string) => fetch(address, { method: 'POST', body });
      const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
      const set = { pool: SCM, repDistance: 100, reps: [rep, rep] };
      const good = await post(JSON.stringify(set));
      expect([good.status, (await good.json()).honestPace]).toEqual([200, 6700]);
      const wrong = await post(JSON.stringify({ ...set, reps: [] }));
      expect([wrong.status, (await wrong.json()).code]).toEqual([422, 'too-few-reps']);
      expect((await post('{')).status).toBe(400);
    } finally {
      server.kill();
    }
  });
});

test('react shows what a second half promises', async () => {
  const project = copyOf('react');
  const outfile = join(project, 'out.mjs');
  await build({
    entryPoints: [join(project, 'HonestPace.jsx')],
    bundle: true,
    format: 'esm',
    jsx: 'automatic',
    external: ['react', 'react/jsx-runtime'],
    outfile,
  });
  // React itself is the one of this repository: two copies in one program do not get along.
  const text = readFileSync(outfile, 'utf8').replace(
    /from "(react[^"]*)"/g,
    (_, name) => `from ${JSON.stringify(import.meta.resolve(name))}`,
  );
  writeFileSync(outfile, text);
  const { HonestPace } = await import(/* @vite-ignore */ pathToFileURL(outfile).href);
  expect(renderToString(createElement(HonestPace))).toContain('1:07.00 per 100, 16:45.00 for 1500');
  expect(renderToString(createElement(HonestPace, { initial: '1:75' }))).toContain('at most 59');
});

test('svelte shows what a second half promises', async () => {
  const project = copyOf('svelte');
  const source = readFileSync(join(project, 'HonestPace.svelte'), 'utf8');
  const { js } = compile(source, { generate: 'server' });
  const file = join(project, 'out.mjs');
  writeFileSync(
    file,
    js.code.replace(
      /from '(svelte[^']*)'/g,
      (_, name) => `from ${JSON.stringify(import.meta.resolve(name))}`,
    ),
  );
  const { default: HonestPace } = await import(/* @vite-ignore */ pathToFileURL(file).href);
  expect(render(HonestPace, { props: {} }).body).toContain('1:07.00 per 100, 16:45.00 for 1500');
  expect(render(HonestPace, { props: { initial: '1:75' } }).body).toContain('at most 59');
});
