import { cpSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { root } from '../repo/surface.js';
import { everyNode, installIn, run } from './pack.js';

const example = `${root}examples/read-a-set`;
const project = join(inject('project'), 'read-a-set');
cpSync(example, project, { recursive: true, filter: (path) => !path.includes('node_modules') });
installIn(project, inject('tarball'));

/** The reps of the file by plain arithmetic, with none of the library's code: hundredths, or NaN. */
const reps = readFileSync(`${example}/saltmarsh-20x100.csv`, 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const cells = line.replace(/"(\d[\d:]*),(\d+)"/g, '$1.$2').split(',');
    const [half, end] = cells.slice(2).map((text) => {
      const [minutes, seconds] = text.includes(':') ? text.split(':') : ['0', text || 'none'];
      return Number(seconds) < 60
        ? Math.round(Number(minutes) * 6000 + Number(seconds) * 100)
        : NaN;
    });
    return { name: cells[0]!, half: half!, end: end! };
  });
const good = reps.filter(({ half, end }) => end > 0 && !(half >= end));
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

describe.each(everyNode())('read-a-set on %s', (node) => {
  const output = run(node, ['read-a-set.js', 'saltmarsh-20x100.csv'], project);

  test('prints what its README shows', async () => {
    await expect(output).toMatchFileSnapshot(`${example}/output.txt`);
  });

  test('reads every good line and lists every other', () => {
    expect(output).toContain(
      `${good.length} reps read, ${reps.length - good.length} lines refused`,
    );
    expect(output.match(/^ {2}line \d+: .+\.$/gm)).toHaveLength(reps.length - good.length);
  });

  test('finds the missed touch and the missing one, and no other slip', () => {
    const slips = output.match(/^ {2}slip .+$/gm) ?? [];
    expect(slips.map((line) => /line \d+/.exec(line)?.[0])).toEqual(['line 90', 'line 123']);
  });

  test.each([...new Set(reps.map(({ name }) => name))])(
    '%s: the figures are those of the file',
    (name) => {
      const own = good.filter((rep) => rep.name === name);
      const seconds = own.filter(({ half }) => half > 0).map(({ half, end }) => end - half);
      const section = output.split('\n\n').find((part) => part.startsWith(name))!;
      expect(section).toContain(`${name}, ${own.length} × 100 on 1:30\n`);
      expect(section).toContain(`average     ${clock(mean(own.map(({ end }) => end)))}\n`);
      expect(section).toContain(`honest pace ${clock(2 * mean(seconds))} per 100\n`);
      expect(section).toContain(`1500 m      ${clock(30 * mean(seconds))}, not the `);
    },
  );
});

function clock(hundredths: number): string {
  const whole = Math.round(hundredths);
  const rest = (whole % 6000).toString().padStart(4, '0');
  return `${Math.floor(whole / 6000)}:${rest.slice(0, 2)}.${rest.slice(2)}`;
}
