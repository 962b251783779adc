import { globSync } from 'node:fs';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { root } from '../repo/surface.js';

test('the types promise what they should, and what must not compile does not', () => {
  const config = ts.getParsedCommandLineOfConfigFile(
    `${root}tsconfig.json`,
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: () => {},
    },
  );
  const paths = globSync('tests/types/*.test-d.ts', { cwd: root }).map((path) => root + path);
  const program = ts.createProgram(paths, config!.options);
  const complaints = paths.flatMap((path) => {
    const file = program.getSourceFile(path)!;
    return program.getSemanticDiagnostics(file).map(({ messageText, start = 0 }) => {
      const line = file.getLineAndCharacterOfPosition(start).line + 1;
      return `${path}:${line} ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
    });
  });
  expect(paths.length).toBeGreaterThan(0);
  expect(complaints).toEqual([]);
}, 60_000);
