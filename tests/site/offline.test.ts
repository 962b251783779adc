import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();

test('after one visit every calculator works with the network off, and keeps its state on reload', async () => {
  const context = await visitor(browser());
  const page = await context.newPage();
  await page.goto(`${inject('site')}/`);
  await underControl(page);
  await context.setOffline(true);
  for (const path of builtPages().filter((built) => /^\/calculators\/./.test(built))) {
    await page.goto(inject('site') + path);
    expect(await page.locator('.headline .figure').first().textContent()).not.toBe('');
  }
  await page.goto(`${inject('site')}/calculators/read-a-set/`);
  await page.getByLabel('Race distance').fill('800');
  await page.waitForURL(/race=800/);
  const before = await page.locator('.headline').textContent();
  await page.reload();
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>('[name=race]')?.value === '800',
  );
  expect(await page.locator('.headline').textContent()).toBe(before);
  await context.close();
});

test('a new version is announced, changes nothing mid-typing, and comes when it is asked for', async () => {
  const site = { version: 1 };
  const server = await newerSite(site);
  const origin = `http://localhost:${(server.address() as AddressInfo).port}`;
  const context = await visitor(browser());
  const page = await context.newPage();
  await page.goto(`${origin}/calculators/read-a-set/`);
  await underControl(page);
  const announcement = page.getByText('A new version of this site is ready');
  expect(await announcement.isVisible()).toBe(false);

  site.version = 2;
  const race = page.getByLabel('Race distance');
  await race.fill('8');
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await announcement.waitFor();
  expect(await race.inputValue()).toBe('8');
  expect(await race.evaluate((field) => field === document.activeElement)).toBe(true);
  await race.fill('800');
  await page.waitForURL(/race=800/);

  const reloaded = page.waitForEvent('load');
  await page.getByRole('button', { name: 'Use it now' }).click();
  await reloaded;
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>('[name=race]')?.value === '800',
  );
  expect(await announcement.isVisible()).toBe(false);
  await context.close();
  server.closeAllConnections();
  server.close();
});

/** The site behind a server of its own, whose worker changes with the version. */
async function newerSite(site: { readonly version: number }): Promise<Server> {
  const server = createServer(async ({ url = '/' }, response) => {
    const from = await fetch(inject('site') + url);
    const body = Buffer.from(await from.arrayBuffer());
    response.writeHead(from.status, { 'content-type': from.headers.get('content-type') ?? '' });
    response.end(url === '/sw.js' ? `${body}\n// ${site.version}` : body);
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  return server;
}

/** Waits until the worker has all it keeps and answers for this page. */
const underControl = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done));
  });
