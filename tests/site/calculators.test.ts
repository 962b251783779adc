import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { STANDARD, violationsOf } from './axe.js';
import { misdeedsOf, PHONE, useBrowser, visitor } from './browser.js';
import { builtPages } from './site-map.js';

const browser = useBrowser();
const jobs = builtPages().flatMap((path) => /^\/calculators\/([^/]+)\/$/.exec(path)?.[1] ?? []);

async function open(job: string, query = ''): Promise<{ page: Page; misdeeds: readonly string[] }> {
  const context = await visitor(browser(), { size: PHONE, theme: 'light' });
  const page = await context.newPage();
  const misdeeds = misdeedsOf(page);
  await page.goto(`${inject('site')}/calculators/${job}/${query}`, { waitUntil: 'load' });
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
  return { page, misdeeds };
}

const typing = '.calculator :is(input[type=text], textarea):not([readonly])';

describe.each(jobs)('%s', (job) => {
  test('starts with an answer, by its script as by its server', async () => {
    const { page, misdeeds } = await open(job);
    const figure = await page.locator('.headline .figure').first().textContent();
    expect(figure).toMatch(/\d/);
    expect(misdeeds).toEqual([]);
    await page.context().close();
  });

  test('says beside a field what is wrong with it, keeps what was typed, and stays accessible', async () => {
    const { page, misdeeds } = await open(job);
    const fields = page.locator(typing);
    const count = await fields.count();
    for (let i = 0; i < count; i++) {
      if (!(await fields.nth(i).isVisible())) continue;
      await fields.nth(i).fill('soon');
      await fields.nth(i).blur();
    }
    // A field is called wrong on leaving it, or a second after the last key.
    await page.waitForSelector('[aria-invalid=true]');
    await page.waitForTimeout(1500);
    let complained = 0;
    for (let i = 0; i < (await fields.count()); i++) {
      const field = fields.nth(i);
      if ((await field.getAttribute('aria-invalid')) !== 'true') continue;
      complained++;
      expect(await field.inputValue()).toBe('soon');
      const described = (await field.getAttribute('aria-describedby')) ?? '';
      const told = await page.evaluate(
        (ids) => ids.map((id) => document.getElementById(id)?.textContent ?? '').join(' '),
        described.split(' '),
      );
      expect(told).toMatch(/Error/);
    }
    expect(complained).toBeGreaterThan(0);
    expect(await violationsOf(page, STANDARD, '.calculator')).toEqual([]);
    expect(misdeeds).toEqual([]);
    await page.context().close();
  });

  test('reaches every control by keyboard alone', async () => {
    const { page } = await open(job);
    const controls = await page.evaluate(() => {
      const all = [
        ...document.querySelectorAll<HTMLElement>(
          '.calculator :is(input, textarea, select, button, summary)',
        ),
      ];
      const shown = all.filter(
        (control) => control.checkVisibility() && !control.hasAttribute('disabled'),
      );
      // Of a group of radio buttons, Tab reaches the one that is chosen.
      const tabbed = shown.filter(
        (c) => !(c instanceof HTMLInputElement && c.type === 'radio' && !c.checked),
      );
      for (const [i, control] of tabbed.entries()) control.setAttribute('data-reach', String(i));
      return tabbed.length;
    });
    const reached = new Set<string>();
    for (let i = 0; i < controls * 2 + 60 && reached.size < controls; i++) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => document.activeElement?.getAttribute('data-reach'));
      if (at) reached.add(at);
    }
    expect(reached.size).toBe(controls);
    await page.context().close();
  });

  test('an address it never wrote brings no crash, and what will do is kept', async () => {
    const queries = [
      '?v=9&pool=moon',
      '?v=1&pool=%3Cimg%20src%3Dx%3E&times=%3Cscript%3E',
      `?v=1&${'x'.repeat(3000)}=1`,
    ];
    for (const query of queries) {
      const { page, misdeeds } = await open(job, query);
      expect(await page.locator('.calculator').textContent()).not.toMatch(/NaN|undefined|Infinity/);
      expect(misdeeds).toEqual([]);
      await page.context().close();
    }
  });

  test('prints on one or two sheets', async () => {
    const { page } = await open(job);
    const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBeLessThanOrEqual(2);
    await page.context().close();
  });
});

test('reps go in one after another by a keypad and its own key', async () => {
  const { page } = await open('read-a-set');
  await page.getByRole('button', { name: 'Start empty' }).click();
  await page.locator('[name=next-first]').focus();
  for (const half of ['34.2', '36.9', '34.5', '37.0', '34.1', '36.8']) {
    await page.keyboard.type(half);
    await page.keyboard.press('Enter');
  }
  expect(await page.locator('[name=reps]').inputValue()).toBe('34.2 36.9\n34.5 37.0\n34.1 36.8');
  // Twice the mean second half: (36.9 + 37.0 + 36.8) / 3 × 2.
  expect(await page.locator('.headline .figure').first().textContent()).toContain('1:13.80');
  await page.context().close();
});
