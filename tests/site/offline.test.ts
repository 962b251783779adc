import { expect, inject, test } from 'vitest';
import { useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();

test('after one visit every calculator works with the network off, and keeps its state on reload', async () => {
  const context = await visitor(browser());
  const page = await context.newPage();
  await page.goto(`${inject('site')}/`);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null) {
      await new Promise((done) =>
        navigator.serviceWorker.addEventListener('controllerchange', done),
      );
    }
  });
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
