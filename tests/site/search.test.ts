import { expect, inject, test } from 'vitest';
import { misdeedsOf, PHONE, useBrowser, visitor } from './browser.js';

const browser = useBrowser();

test('search finds a page, under the strict policy and by keyboard', async () => {
  const context = await visitor(browser(), { size: PHONE, theme: 'light' });
  const page = await context.newPage();
  const misdeeds = misdeedsOf(page);
  await page.goto(`${inject('site')}/`);
  await page.getByRole('button', { name: 'Search' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('broken swim');
  const found = page.locator('dialog a[href*="/calculators/broken-swim/"]').first();
  await found.waitFor();
  await found.focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/calculators\/broken-swim\//);
  expect(misdeeds).toEqual([]);
  await context.close();
});
