import { globSync, readFileSync } from 'node:fs';
import { PacingError } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { errorCodes } from './error-codes.js';
import { namesIn, publicNames, source, summaryOf } from './surface.js';

const BANNED = /\b(invalid|illegal|please|sorry|oops)\b/i;
const code = globSync('**/*.ts', { cwd: source }).map(
  (file) => [file, readFileSync(source + file, 'utf8')] as const,
);

/** The codes that a type's doc comment lists, each with its meaning: "- `code`: meaning." */
function listed(type: string): readonly string[] {
  const text = summaryOf(publicNames.find(({ name }) => name === type)!.symbol);
  return [...text.matchAll(/^- `([a-z-]+)`: .+/gm)].map(([, name = '']) => name);
}

describe.each(['PacingErrorCode', 'CautionCode'])('%s', (type) => {
  test('every code is explained once, in the order of the union', () => {
    expect(listed(type)).toEqual(namesIn(type));
  });

  test('every code is raised somewhere', () => {
    const raised = (name: string) =>
      code.some(([, text]) => text.replace(/^ *(\*|\|) .*$/gm, '').includes(`'${name}'`));
    expect(namesIn(type).filter((name) => !raised(name))).toEqual([]);
  });
});

test.each(Object.entries(errorCodes))(
  '%s happens, and says in one sentence what would do',
  (name, call) => {
    const error = thrownBy(call);
    expect(error).toMatchObject({ name: 'PacingError', code: name });
    expect(error.message).toMatch(/^["A-Z−\d][^\n]{10,}\.$/);
    expect(error.message).not.toMatch(/[.!?] [A-Z]/);
  },
);

test('there is a call for every code', () => {
  expect(Object.keys(errorCodes).sort()).toEqual([...namesIn('PacingErrorCode')].sort());
});

test('no text of the library scolds or grovels', () => {
  const found = code.flatMap(([file, text]) =>
    text.split('\n').flatMap((line, i) => (BANNED.test(line) ? [`${file}:${i + 1} ${line}`] : [])),
  );
  expect(found).toEqual([]);
});

function thrownBy(call: () => unknown): PacingError {
  try {
    call();
  } catch (error) {
    if (error instanceof PacingError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}
