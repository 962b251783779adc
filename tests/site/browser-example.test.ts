import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { useBrowser, visitor } from './browser.js';

const browser = useBrowser();
const root = fileURLToPath(new URL('../../', import.meta.url));

test('the example without a bundler runs on the built files, in any browser that knows import maps', async () => {
  const server = createServer(({ url = '/' }, response) => {
    const built = /^\/node_modules\/backhalf\/dist\/([\w.-]+\.js)$/.exec(url)?.[1];
    if (built !== undefined) {
      response.setHeader('content-type', 'text/javascript');
      response.end(readFileSync(`${root}packages/core/dist/${built}`));
    } else if (url === '/') {
      response.setHeader('content-type', 'text/html');
      response.end(readFileSync(`${root}examples/browser/index.html`));
    } else response.writeHead(404).end();
  });
  await new Promise<void>((ready) => server.listen(0, 'localhost', ready));
  const context = await visitor(browser());
  const page = await context.newPage();
  await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/`);
  const result = page.locator('#result');
  await page.waitForFunction(() => document.querySelector('output')?.value !== '');
  expect(await result.textContent()).toBe('+3.10: a positive split');
  await page.getByLabel('Laps').fill('31.4 soon');
  expect(await result.textContent()).toMatch(/no time/);
  await context.close();
  server.close();
});
