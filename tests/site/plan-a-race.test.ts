import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { PHONE, useBrowser, visitor } from './browser.js';

const browser = useBrowser();

async function open(query = ''): Promise<Page> {
  const context = await visitor(browser(), { size: PHONE, theme: 'light' });
  const page = await context.newPage();
  await page.goto(`${inject('site')}/calculators/plan-a-race/${query}`, { waitUntil: 'load' });
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return page;
}

const halfway = (page: Page) => page.locator('.headline .figure').textContent();
const note = (page: Page) => page.locator('.headline .note').textContent();

describe('the shape is chosen', () => {
  test('by dragging the second half in the chart', async () => {
    const page = await open();
    const handle = page.getByRole('slider');
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.boundingBox();
    if (box === null) throw new Error('There is no handle.');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 300, { steps: 5 });
    await page.mouse.up();
    expect(await note(page)).toMatch(/slower$/);
    expect(await page.locator('input[name=way][value=slower]').isChecked()).toBe(true);
    await page.context().close();
  });

  test('by buttons, which do what dragging does', async () => {
    const page = await open();
    await page.getByRole('button', { name: '0.30 faster' }).click();
    expect(await note(page)).toBe('second half 3.30 faster');
    expect(await page.locator('input[name=gap]').inputValue()).toBe('3.30');
    await page.getByRole('button', { name: 'Even', exact: true }).click();
    expect(await halfway(page)).toBe('2:13.00');
    await page.context().close();
  });

  test('by the keyboard, and said aloud', async () => {
    const page = await open();
    const handle = page.getByRole('slider');
    await handle.focus();
    await page.keyboard.press('ArrowUp');
    expect(await handle.getAttribute('aria-valuetext')).toBe('3.10 faster');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    expect(await handle.getAttribute('aria-valuetext')).toBe('2.90 faster');
    await page.context().close();
  });

  test('by numbers', async () => {
    const page = await open();
    await page.locator('input[name=gap]').fill('1,5');
    expect(await halfway(page)).toBe('2:13.75');
    await page.context().close();
  });
});

describe('the card', () => {
  const races = [
    ['a 400', ''],
    ['1500 m in a short pool', '?v=1&pool=25m&distance=1500&goal=16:45&shape=even'],
    ['1650 yd', '?v=1&pool=25yd&distance=1650&goal=18:20&shape=even'],
    ['ten kilometres', '?v=1&distance=10000&goal=2:10:00&shape=even'],
  ] as const;

  test.each(races)('%s prints on one sheet, in figures of 18 points or more', async (_, query) => {
    const page = await open(query);
    for (const format of ['A4', 'Letter']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    }
    await page.emulateMedia({ media: 'print' });
    const sizes = await page
      .locator('.pace-card td')
      .evaluateAll((cells) =>
        cells.map((cell) => Number.parseFloat(getComputedStyle(cell).fontSize)),
      );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(18 / 0.75);
    await page.context().close();
  });
});
