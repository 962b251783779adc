import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const script = readFileSync(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');

/** The levels of the guidelines the site keeps, and what is good practice beyond them. */
export const STANDARD: axe.RunOptions = {
  runOnly: {
    type: 'tag',
    values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  },
};

/** Where the page stays and only its colours change. */
export const COLOURS: axe.RunOptions = { runOnly: ['color-contrast'] };

/** What axe finds against a page, or against one part of it and the frames in it. */
export async function violationsOf(
  page: Page,
  options: axe.RunOptions = STANDARD,
  within = 'html',
): Promise<readonly string[]> {
  // Through the debugger, past the page's own policy on scripts; each document needs it once.
  for (const frame of page.frames()) {
    if (!(await frame.evaluate(() => 'axe' in window))) await frame.evaluate(script);
  }
  const how: axe.RunOptions = { ...options, resultTypes: ['violations'] };
  return page.evaluate(
    async ([part, how]) => {
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(part, how);
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    },
    [within, how] as const,
  );
}
