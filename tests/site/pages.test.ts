import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { COLOURS, STANDARD, violationsOf } from './axe.js';
import { DESKTOP, misdeedsOf, PHONE, useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();

// The reference pages come out of one template: a look at a few stands for all, and the links test
// reads each of them. Every other page is looked at.
const API = /^\/api\/./;
const pages = builtPages();
const looked = [
  ...pages.filter((path) => !API.test(path)),
  ...pages.filter((path) => API.test(path)).slice(0, 3),
];

test.each(looked)(
  '%s is accessible, quiet and keeps its width, on phone and desktop, light and dark',
  async (path) => {
    const context = await visitor(browser(), { size: PHONE, theme: 'light' });
    const page = await context.newPage();
    const misdeeds = misdeedsOf(page);
    await page.goto(inject('site') + path, { waitUntil: 'load' });
    const light = await paper(page);
    for (const size of [PHONE, DESKTOP]) {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme: 'light' });
      await expect.poll(() => paper(page)).toBe(light);
      expect(await violationsOf(page, STANDARD), `light, ${size.width} px`).toEqual([]);
      expect(await overflow(page)).toBe(0);
      await page.emulateMedia({ colorScheme: 'dark' });
      await expect.poll(() => paper(page)).not.toBe(light);
      expect(await violationsOf(page, COLOURS), `dark, ${size.width} px`).toEqual([]);
    }
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await overflow(page)).toBe(0);
    expect(misdeeds).toEqual([]);
    await context.close();
  },
);

/** How far the page can be scrolled sideways, in pixels. */
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const paper = (page: Page): Promise<string> =>
  page.evaluate(() => getComputedStyle(document.body).backgroundColor);
