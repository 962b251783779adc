import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { formatSet, safeParseSet } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { WORDS } from '../../../packages/core/src/sets/notation/words.js';
import { type Grammar, readGrammar, sentence, terminalsOf } from '../../ebnf.js';
import { numbersFrom, runs, seed } from '../../random.js';

// The grammar that is tested is the one on the page.
const page = new URL(
  '../../../docs-site/src/content/docs/library/set-grammar.mdx',
  import.meta.url,
);
const [, fence = ''] = /```ebnf\n(.*?)```/s.exec(readFileSync(fileURLToPath(page), 'utf8')) ?? [];
const grammar: Grammar = readGrammar(fence);

/** One plain sentence or more for each production. */
const examples: Record<string, readonly string[]> = {
  set: ['400\nMS 4 x 100\n'],
  block: ['WU\n400\n= 400'],
  items: ['100 + 200'],
  separator: ['100, 200', '100\n200', '100\n;\n200'],
  lines: ['100\n\n\n200'],
  item: ['100'],
  swims: ['4 x 100', '4 100s', '100-200 m r 10'],
  rounds: ['3 x (100 + 50)', '(100)'],
  open: ['3 rounds of: 100 + 50', '3 rounds (100)'],
  broken: ['2 x broken 200 on 4:00: 4 x 50 r 10'],
  bracketed: ['(100)', '[100]', '{\n100\n}'],
  details: ['100 free, easy\nby 25'],
  detail: ['100 free', '100 odds kick', '100 build', '100 hold 1:20', '100 r 10'],
  manner: ['100 fly kick by 25'],
  stroke: ['100 choice'],
  kind: ['100 drill'],
  effort: ['100 sprint'],
  within: ['100 neg split', '100 (-)', '100 even pace'],
  parity: ['4 x 50 r 5 odd kick / even: swim'],
  reps: ['4 x 50 even reps kick'],
  shape: ['4 x 100 d1-4', '4 x 100 1→4', '4 x 100 best average'],
  pattern: ['4 x 100 desc 2-2'],
  target: ['100 in 1:20'],
  interval: ['100 on 1:30', '100 r 10'],
  sendoff: ['50 @ the :50 / :55', '50 :50 / 1:00'],
  rest: ['50 r:10', '50 @ 15 RI', '50 rest 10 sec'],
  time: ["50 r 1'", '50 r 10 s'],
  clock: ['50 on 1:30', '50 on :45'],
  second: ['50 r 10"'],
  minute: ['50 r 2 min'],
  heading: ['Warm-up: 400'],
  total: ['400\ntotal: 400 m'],
  times: ['4 × 100', '4*100'],
  unit: ['100 yards'],
  number: ['1500'],
};

// A sentence of the grammar may still not make sense; then it is refused for that, not as unreadable.
const SENSELESS = ['set-contradiction', 'set-ambiguous', 'time-ambiguous', 'too-many-reps'];

describe('the grammar on the page', () => {
  test('has an example for each production', () => {
    expect(Object.keys(examples)).toEqual([...grammar.keys()]);
  });

  test.each(Object.entries(examples).flatMap(([name, texts]) => texts.map((text) => [name, text])))(
    '%s: %j is read',
    (_, text) => {
      expect(safeParseSet(text!)).toMatchObject({ ok: true });
    },
  );

  test('names every word that is read, and no other', () => {
    const spelt = terminalsOf(grammar).flatMap(
      (terminal) => terminal.match(/[a-z]+|\(-\)|''|["'@/×*=]/g) ?? [],
    );
    const read = [...WORDS.keys()].filter((word) => !/[ -]/.test(word) || word === '(-)');
    expect([...new Set(spelt)].sort()).toEqual([...new Set(read)].sort());
  });

  test('its sentences are read, or refused because they make no sense', () => {
    const count = Math.max(20_000, runs);
    const next = numbersFrom(seed);
    let read = 0;
    for (let i = 0; i < count; i += 1) {
      const text = sentence(grammar, 'set', next);
      const result = safeParseSet(text);
      if (result.ok) {
        read += 1;
        const written = formatSet(result.value);
        const again = safeParseSet(written);
        expect(again.ok && formatSet(again.value)).toBe(written);
      } else if (!SENSELESS.includes(result.error.code)) {
        expect.fail(
          JSON.stringify({ text, error: result.error.message, at: result.error.position }),
        );
      }
    }
    expect(read).toBeGreaterThan(count / 4);
  }, 60_000);
});
