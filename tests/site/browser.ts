import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';

// Without these a headless Chromium looks things up on the network of its own accord.
const QUIET = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const PHONE = { width: 390, height: 844 };
export const DESKTOP = { width: 1280, height: 800 };

export interface Look {
  readonly size: { readonly width: number; readonly height: number };
  readonly theme: 'light' | 'dark';
}

/** A Chromium for the tests of one file. */
export function useBrowser(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    const executablePath = process.env['CHROME_PATH'] ?? chromium.executablePath();
    browser = await chromium.launch({ executablePath, args: QUIET });
  });
  afterAll(async () => {
    await browser?.close();
  });
  return () => {
    if (browser === undefined) throw new Error('No browser was started.');
    return browser;
  };
}

/** A fresh visitor; the theme is set the way a person's system sets it. */
export async function visitor(
  browser: Browser,
  { size, theme }: Look = { size: DESKTOP, theme: 'light' },
): Promise<BrowserContext> {
  return browser.newContext({ viewport: size, colorScheme: theme, reducedMotion: 'reduce' });
}

/** What a page did that it must not: errors in the console, requests to other places. */
export function misdeedsOf(page: Page): readonly string[] {
  const misdeeds: string[] = [];
  const origin = inject('site');
  page.on('console', (message) => {
    if (message.type() === 'error') misdeeds.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => misdeeds.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(data|blob):/.test(url)) misdeeds.push(`request: ${url}`);
  });
  return misdeeds;
}
