import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, inject, test } from 'vitest';
import { DESKTOP, LOOKS, misdeedsOf, useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();
const STANDARD = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

// The reference pages come out of one template: a look at a few stands for all, and the links test
// reads each of them. Every other page is looked at.
const API = /^\/api\/./;
const pages = builtPages();
const looked = [
  ...pages.filter((path) => !API.test(path)),
  ...pages.filter((path) => API.test(path)).slice(0, 3),
];

describe.each(LOOKS)('at $size.width px, $theme', (look) => {
  test.each(looked)('%s is accessible, quiet and keeps its width', async (path) => {
    const context = await visitor(browser(), look);
    const page = await context.newPage();
    const misdeeds = misdeedsOf(page);
    await page.goto(inject('site') + path, { waitUntil: 'load' });
    // The page is the same in the dark; only its colours are others.
    const axe = new AxeBuilder({ page });
    const { violations } = await (look.theme === 'dark'
      ? axe.withRules('color-contrast')
      : axe.withTags(STANDARD)
    ).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(await overflow(page)).toBe(0);
    if (look.size !== DESKTOP) {
      await page.setViewportSize({ width: 320, height: 640 });
      expect(await overflow(page)).toBe(0);
    }
    // A missing page is asked for by name, and answers 200 from the file: nothing else is an error.
    expect(misdeeds).toEqual([]);
    await context.close();
  });
});

/** How far the page can be scrolled sideways, in pixels. */
const overflow = (page: import('playwright-core').Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
