import { expect, inject, test } from 'vitest';
import { useBrowser, visitor } from './browser.js';

const browser = useBrowser();

test('a piece of code is copied whole, by keyboard', async () => {
  const context = await visitor(browser());
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const page = await context.newPage();
  await page.goto(`${inject('site')}/library/`);
  const shown = await page.locator('main pre').nth(1).textContent();
  await page.locator('main pre + button').nth(1).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Copied' }).waitFor();
  expect(shown).toContain("from 'backhalf'");
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(shown?.trimEnd());
  await context.close();
});
