import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { describe, expect, inject, test } from 'vitest';
import { snippetOf } from '../../docs-site/src/embed/snippet.js';
import { PHONE, useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();
const jobs = builtPages()
  .map((path) => /^\/embed\/([^/]+)\/$/.exec(path)?.[1])
  .filter((job) => job !== undefined);

test('every calculator can be embedded', () => {
  const own = builtPages().flatMap((path) => /^\/calculators\/([^/]+)\/$/.exec(path)?.[1] ?? []);
  expect(jobs).toEqual(own);
});

describe('in a page of another origin, by the lines the site writes', () => {
  test.each(jobs)('%s stands at its full height and works', async (job) => {
    const context = await visitor(browser(), { size: PHONE, theme: 'light' });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    const body = `<!doctype html><title>Host</title>${snippetOf(inject('site'), job, job, 'dark')}`;
    const host = createServer((_, response) => {
      response.setHeader('content-type', 'text/html; charset=utf-8').end(body);
    });
    await new Promise<void>((ready) => host.listen(0, 'localhost', ready));
    await page.goto(`http://localhost:${(host.address() as AddressInfo).port}/`);
    const element = await page.waitForSelector('iframe');
    await page.waitForFunction(() => document.querySelector('iframe')?.height !== '900');

    const frame = await element.contentFrame();
    const inside = await frame!.evaluate(() => document.body.getBoundingClientRect().height);
    const given = Number(await element.getAttribute('height'));
    expect(Math.abs(given - inside)).toBeLessThan(3);
    expect(await frame!.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    expect(await frame!.locator('header, nav').count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
    host.close();
  });
});
