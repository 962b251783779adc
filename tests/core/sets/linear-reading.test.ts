import { safeParseSet } from 'backhalf';
import { describe, expect, test } from 'vitest';

// Reading takes one step a piece of text: each step is a pattern tried, so the tries are counted.
const shapes: Record<string, (size: number) => string> = {
  'many sets on one line': (size) => '100 + '.repeat(size / 6).slice(0, -3),
  'many lines': (size) => '100 easy\n'.repeat(size / 9),
  'a ladder': (size) => '50-'.repeat(size / 3).slice(0, -1),
  'empty lines': (size) => `100${'\n'.repeat(size)}`,
  'empty lines inside brackets': (size) => `2 x (100${'\n'.repeat(size)})`,
  blanks: (size) => `100${' '.repeat(size)}`,
  'blank lines': (size) => `100${'  \n'.repeat(size / 3)}`,
  'comments after one set': (size) => `100${'\n# so'.repeat(size / 5)}`,
  'comments inside brackets': (size) => `(${'100 # so\n'.repeat(size / 9)})`,
  'brackets never closed': (size) => '('.repeat(size),
  'brackets side by side': (size) => '(100)\n'.repeat(size / 6),
  'brackets nested, over and over': (size) => '((((((((((((100))))))))))))\n'.repeat(size / 28),
  'rounds of rounds': (size) => `${'2 rounds: '.repeat(18)}100${', 100'.repeat(size / 5)}`,
  'a broken swim of many pieces': (size) => `broken 99999: ${'1 + '.repeat(size / 4)}1`,
  details: (size) => `100 ${'free, '.repeat(size / 6)}`,
  'send-offs for many lanes': (size) => `50 on ${':45 / '.repeat(size / 6)}:45`,
  'commas after one set': (size) => `100${','.repeat(size)}`,
  'a long pattern': (size) => `100 descend ${'1-'.repeat(size / 2)}1`,
  'a long word': (size) => 'x'.repeat(size),
  digits: (size) => '1'.repeat(size),
  'colons between digits': (size) => '1:'.repeat(size / 2),
};

describe('reading a set takes time in step with its length', () => {
  test.each(Object.entries(shapes))('%s', (_, shape) => {
    const [short, long] = [12_500, 50_000].map((size) => stepsFor(shape(size)));
    // Four times as long, four times the steps: a square would be sixteen.
    expect(long! / short!).toBeLessThan(5);
  });

  test.each(Object.entries(shapes))(
    '%s: 100,000 characters within the time of a test',
    (_, shape) => {
      const text = shape(100_000).slice(0, 100_000);
      expect(text.length).toBeGreaterThan(99_000);
      expect(typeof safeParseSet(text).ok).toBe('boolean');
    },
  );
});

/** How many patterns are tried and pieces looked up while a text is read. */
function stepsFor(text: string): number {
  const { exec } = RegExp.prototype;
  const { get } = Map.prototype;
  let steps = 0;
  RegExp.prototype.exec = function (this: RegExp, ...args) {
    steps += 1;
    return exec.apply(this, args);
  };
  Map.prototype.get = function (this: Map<unknown, unknown>, key) {
    steps += 1;
    return get.call(this, key);
  };
  try {
    safeParseSet(text);
  } finally {
    RegExp.prototype.exec = exec;
    Map.prototype.get = get;
  }
  return steps;
}
