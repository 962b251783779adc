import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { misdeedsOf, useBrowser } from './browser.js';

const browser = useBrowser();
const home = '/calculators/critical-speed/';
const written = '12 x 100 in 1:11 on 1:20';
const field = 'Set to follow the reserve through';

/** The page without its worker, so that what it fetches can be counted and refused. */
async function open(path: string, before: (page: Page) => Promise<unknown> = async () => {}) {
  const context = await browser().newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await before(page);
  await page.goto(inject('site') + path);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return page;
}

const verdictsOf = (page: Page) =>
  page.getByRole('region', { name: 'The reserve through the set' }).locator('td:nth-child(2)');

test('reads sets only once one is written, and then follows the reserve through it', async () => {
  const page = await open(home);
  const misdeeds = misdeedsOf(page);
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await page.getByLabel('Race distance').fill('800');
  await page.waitForURL(/race=800/);
  expect(fetched).toEqual([]);
  expect(await verdictsOf(page).count()).toBe(0);

  await page.getByLabel(field).focus();
  await page.keyboard.type(written);
  await expect
    .poll(() => verdictsOf(page).allTextContents())
    .toEqual(['comfortable', 'borderline', 'needs its time constant']);
  expect(fetched.filter((url) => url.includes('through-set'))).toHaveLength(1);

  await page.keyboard.type(' quickly');
  await page.keyboard.press('Tab');
  await page.waitForSelector('textarea.set-text[aria-invalid=true]');
  expect(await page.getByLabel(field).inputValue()).toBe(`${written} quickly`);
  expect(await page.locator('.headline .figure').textContent()).toBe('1:16.78');
  expect(misdeeds).toEqual([]);
  await page.context().close();
});

test('an address with a set brings the whole answer, and moves nothing when it comes', async () => {
  const answered = Promise.withResolvers<void>();
  const page = await open(
    `${home}?${new URLSearchParams({ v: '1', set: written, tau: '300' })}`,
    async (fresh) => {
      await fresh.route(/through-set/, async (route) => {
        await answered.promise;
        await route.continue();
      });
    },
  );
  await expect.poll(() => verdictsOf(page).allTextContents()).toEqual(['…', '…', '…']);
  const below = page.locator('.result details').first();
  const before = await below.boundingBox();
  answered.resolve();
  await expect
    .poll(() => verdictsOf(page).allTextContents())
    .toEqual(['comfortable', 'borderline', 'beyond']);
  expect(await below.boundingBox()).toEqual(before);
  await page.context().close();
});

test('says beside the field that the reader of sets did not come, and leaves the fit standing', async () => {
  const page = await open(home, (fresh) => fresh.route(/through-set/, (route) => route.abort()));
  await page.getByLabel(field).fill(written);
  await page.getByText('could not be fetched').first().waitFor();
  expect(await page.locator('.headline .figure').textContent()).toBe('1:16.78');
  await page.context().close();
});

test('follows a set that is written with the network off', async () => {
  const context = await browser().newContext();
  const page = await context.newPage();
  await page.goto(inject('site') + home);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await context.setOffline(true);
  await page.reload();
  await page.getByLabel(field).fill(written);
  await expect.poll(() => verdictsOf(page).first().textContent()).toBe('comfortable');
  await context.close();
});
