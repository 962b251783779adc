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
  const program = ts.createProgram([`${root}tests/types/surface.test-d.ts`], config!.options);
  const file = program.getSourceFile(program.getRootFileNames()[0]!);
  const complaints = program.getSemanticDiagnostics(file).map(({ messageText, start = 0 }) => {
    const line = file!.getLineAndCharacterOfPosition(start).line + 1;
    return `line ${line}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
  });
  expect(complaints).toEqual([]);
});
