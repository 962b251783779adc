import { gzipSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';
import { useBrowser } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();
const pages = builtPages().filter((path) => !/^\/(api|embed|states)\//.test(path));
const island = /^\/calculators\/./;
// Writing an embed's lines is a small tool of its own on a page of the library's.
const reading = pages.filter((path) => !island.test(path) && path !== '/library/embed/');

/** All the script a page brings, compressed one by one: inline ones and those it loads. */
async function scriptOf(path: string): Promise<number> {
  // Without the worker, which is no part of a page and would fetch the whole site meanwhile.
  const context = await browser().newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const bodies: Promise<Buffer>[] = [];
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') bodies.push(response.body());
  });
  await page.goto(inject('site') + path, { waitUntil: 'networkidle' });
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  const inline = await page.evaluate(() =>
    [...document.querySelectorAll('script:not([src])')].map(({ textContent }) => textContent ?? ''),
  );
  const all = [...(await Promise.all(bodies)), ...inline.map((text) => Buffer.from(text))];
  await context.close();
  return all.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0);
}

test.each(pages.filter((path) => island.test(path)))(
  '%s: at most 45 kB of script',
  async (path) => {
    expect(await scriptOf(path)).toBeLessThanOrEqual(45_000);
  },
);

test.each(reading)('%s: at most 8 kB of script', async (path) => {
  expect(await scriptOf(path)).toBeLessThanOrEqual(8_000);
});
