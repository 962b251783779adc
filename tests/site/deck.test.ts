import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { STANDARD, violationsOf } from './axe.js';
import { misdeedsOf, PHONE, useBrowser, visitor } from './browser.js';

const browser = useBrowser();

async function deck(): Promise<{ page: Page; misdeeds: readonly string[] }> {
  const context = await visitor(browser(), { size: PHONE, theme: 'light' });
  const page = await context.newPage();
  const misdeeds = misdeedsOf(page);
  await page.goto(`${inject('site')}/calculators/deck/`, { waitUntil: 'networkidle' });
  return { page, misdeeds };
}

const touchButton = (page: Page) => page.getByRole('button', { name: 'Touch', exact: true });
const touches = (page: Page) => page.locator('.timing .touch-list li');
const start = (page: Page) => page.getByRole('button', { name: /^Start\s*as the first/ }).click();
/** The address is written at most every half second. */
const inAddress = (page: Page, count: number) =>
  expect
    .poll(() => new URL(page.url()).searchParams.get('touches')?.split(' ').filter(Boolean).length)
    .toBe(count);

test('a set is timed with the thumb, bounces left out, the last tap undone', async () => {
  const { page, misdeeds } = await deck();
  await start(page);
  const box = await touchButton(page).boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(56);
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(PHONE.height);
  expect(box?.y).toBeGreaterThan(PHONE.height / 4); // in the thumb's reach

  // Two presses in one go are less than 150 ms apart, however slow the machine.
  await touchButton(page).evaluate((button) => {
    const press = () => new PointerEvent('pointerdown', { bubbles: true, button: 0 });
    button.dispatchEvent(press());
    button.dispatchEvent(press());
  });
  await expect.poll(() => touches(page).count()).toBe(1);
  expect(await page.locator('.tap-said').textContent()).toMatch(/second touch .* was ignored/);

  await page.waitForTimeout(200);
  await page.mouse.move((box?.x ?? 0) + 50, (box?.y ?? 0) + 50);
  await page.mouse.down(); // and not let go: a touch counts as it is pressed
  await expect.poll(() => touches(page).count()).toBe(2);
  await page.mouse.up();
  expect(await touches(page).count()).toBe(2);

  await page.getByRole('button', { name: 'Undo last tap' }).click();
  await expect.poll(() => touches(page).count()).toBe(1);
  expect(await page.locator('.tap-said').textContent()).toMatch(/was undone/);
  expect(await violationsOf(page, STANDARD, '.calculator')).toEqual([]);
  expect(misdeeds).toEqual([]);
  await page.context().close();
});

test('two lanes that touch in one moment are two touches', async () => {
  const { page } = await deck();
  await page.locator('#deck-swimmers').fill('Mara 1:05 1\nIvo 1:10 2');
  await page.getByLabel('One a lane').check();
  await start(page);
  await page.locator('.tap-buttons').evaluate((buttons) => {
    for (const button of buttons.children) {
      button.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }));
    }
  });
  await expect.poll(() => touches(page).count()).toBe(2);
  expect(await page.locator('.tap-said').textContent()).toBe('');
  await page.context().close();
});

test('Space taps while the button has the focus, and only then', async () => {
  const { page } = await deck();
  await start(page);
  await page.waitForTimeout(200);
  await page.keyboard.press('Space');
  await expect.poll(() => touches(page).count()).toBe(1);
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await page.keyboard.press('Space');
  await page.waitForTimeout(200);
  expect(await touches(page).count()).toBe(1);
  await page.context().close();
});

test('a reload loses no touch and the clock runs on', async () => {
  const { page } = await deck();
  await start(page);
  await touchButton(page).click();
  await inAddress(page, 1);
  const clock = async () =>
    Number(/[\d.]+$/.exec((await page.locator('.running-clock').textContent()) ?? '')?.[0]);
  const before = await clock();
  await page.reload({ waitUntil: 'networkidle' });
  expect(await touches(page).count()).toBe(1);
  await expect.poll(clock).toBeGreaterThan(before);
  expect(await clock()).toBeLessThan(before + 30);
  await page.waitForTimeout(200);
  await touchButton(page).click();
  await inAddress(page, 2);
  await page.getByRole('button', { name: 'The set is over' }).click();
  expect(await page.locator('.headline').textContent()).toMatch(/of 2/);
  await page.context().close();
});

test('a new set leaves the way back to the one before', async () => {
  const { page } = await deck();
  const whole = await page.locator('.headline').textContent();
  await start(page);
  await page.getByRole('button', { name: 'The set is over' }).click();
  await page.getByRole('button', { name: 'Put back what stood here' }).click();
  expect(await page.locator('.headline').textContent()).toBe(whole);
  await page.context().close();
});

test('a doubtful touch is settled with one tap, and the reps open in the next calculator', async () => {
  const { page, misdeeds } = await deck();
  const doubtful = page.getByRole('list', { name: 'Doubtful touches' });
  const before = await doubtful.getByRole('listitem').count();
  expect(before).toBeGreaterThan(0);
  await doubtful
    .getByRole('button', { name: /^Yes, / })
    .first()
    .click();
  await expect.poll(() => page.locator('.headline').textContent()).toMatch(/32 of 32|31 of 32/);
  const open = page.getByRole('region', { name: /^Reps to open/ });
  await open.getByRole('link', { name: 'Mara Quill' }).click();
  await page.waitForURL(/read-a-set/);
  await expect.poll(() => page.locator('.headline').textContent()).toMatch(/\d:\d\d\.\d\d/);
  expect(misdeeds).toEqual([]);
  await page.context().close();
});
