// Every test, from a fresh clone: install, a Chromium, build, then unit, property, reference, package
// and browser tests. Arguments go to Vitest: npm test -- tests/core/time
import { mkdirSync } from 'node:fs';
import { build, install, run } from './ready.mjs';

install();
const { needChromium } = await import('./chromium.mjs');
const browser = await needChromium();
build();
mkdirSync(new URL('../reports/', import.meta.url), { recursive: true });
const reporters = ['--reporter=default', '--reporter=json', '--outputFile.json=reports/tests.json'];
process.exit(
  run('vitest', ['run', ...reporters, ...process.argv.slice(2)], { CHROME_PATH: browser }),
);
