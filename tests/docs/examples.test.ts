import { describe, expect, test } from 'vitest';
import { everyExample, root } from './every-example.js';
import { holds, rewrite, run, statedValue } from './examples.js';

// UPDATE_EXAMPLES=1 writes the true values in place of the stated ones; read the diff.
const update = process.env['UPDATE_EXAMPLES'] === '1';

describe('every example gives what it states', () => {
  test('there are examples to run', () => {
    expect(everyExample.length).toBeGreaterThan(20);
  });

  test.each(
    everyExample.map(
      (example) => [`${example.file.slice(root.length)}:${example.line}`, example] as const,
    ),
  )('%s', (_, example) => {
    for (const { line, stated, actual } of run(example)) {
      if (update && !holds(stated, actual)) rewrite(example.file, line, actual);
      else expect(actual, `line ${line}`).toEqual(statedValue(stated));
    }
  });
});
