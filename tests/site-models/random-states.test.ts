import fc from 'fast-check';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';

// What any address could bring: each calculator is drawn as the server draws it, with 500 random states.

interface Model {
  readonly shape?: Readonly<Record<string, 'any' | readonly string[]>>;
}

const calculators = import.meta.glob('../../docs-site/src/calculators/*/Calculator.tsx');
const models = import.meta.glob<Model>('../../docs-site/src/calculators/*/{model,fields}.ts');

const tag = '<img src=x onerror=alert(1)>';
const text = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.constantFrom(
    '',
    '0',
    '-1',
    '−1',
    '1e308',
    '105',
    '3350',
    '31,5',
    '1:05.3',
    '1:75',
    '16:46.6',
    '100',
    '1500',
    '25',
    '33,33',
    '31.5 33.5\n31.4 33.6',
    '31,5;33,5',
    '200 2:20\n400 4:55\n800 10:12',
    '10 x 100 on 1:30',
    '3 x (4 x 50',
    'Mara 1:05\nIvo 1:08',
    tag,
    '"><script>',
    '&amp;',
    '\u202e',
    '\u0000',
    '9'.repeat(400),
  ),
);

const jobs = Object.keys(calculators).map((path) => /calculators\/([^/]+)/.exec(path)?.[1] ?? '');

describe.each(jobs)('%s', (job) => {
  test('draws any state: no crash, no NaN, nothing unescaped', async () => {
    const folder = `../../docs-site/src/calculators/${job}`;
    const { default: Calculator } = (await calculators[`${folder}/Calculator.tsx`]!()) as {
      default: () => never;
    };
    const found = await Promise.all(
      ['model', 'fields'].map((file) => models[`${folder}/${file}.ts`]?.()),
    );
    const shape = found.find((module) => module?.shape !== undefined)?.shape ?? {};
    expect(Object.keys(shape).length).toBeGreaterThan(0);
    const fields = Object.entries(shape).map(([name, choices]) => [
      name,
      choices === 'any' ? text : fc.constantFrom(...choices),
    ]);
    const state = fc.record(Object.fromEntries(fields) as Record<string, fc.Arbitrary<string>>);
    fc.assert(
      fc.property(state, (initial) => {
        const html = render(h(Calculator as never, { initial }));
        const shown = html.replace(/(value|aria-label)="[^"]*"|<textarea.*?<\/textarea>/gs, '');
        const typed = Object.values(initial).join(' ');
        for (const word of ['NaN', 'Infinity', 'undefined', '[object']) {
          if (!typed.includes(word)) expect(shown).not.toContain(word);
        }
        expect(html).not.toContain(tag);
        expect(html).not.toContain('"><script>');
      }),
      { numRuns: 500 },
    );
  }, 120_000);
});
