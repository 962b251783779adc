import ts from 'typescript';
import { expect, test } from 'vitest';
import { everyExample } from '../docs/every-example.js';
import { type Entry, entries, namesOf, root } from '../repo/surface.js';

// What a person copies from a page or an editor's tooltip must compile as it stands.
const imports = (Object.keys(entries) as Entry[])
  .map((entry) => `import { ${namesOf(entry).map(inImport).join(', ')} } from '${entry}';`)
  .join(' ');
const modules = new Map(
  everyExample.map(({ code }, i) => [
    `${root}tests/types/example-${i}.ts`,
    `${imports} {\n${code}\n}`,
  ]),
);

test('every example compiles', () => {
  const program = programOf(modules);
  const complaints = [...modules.keys()].flatMap((path, i) => {
    const file = program.getSourceFile(path)!;
    const found = [
      ...program.getSyntacticDiagnostics(file),
      ...program.getSemanticDiagnostics(file),
    ];
    return found.map(({ messageText, start = 0 }) => {
      const { file: page, line } = everyExample[i]!;
      const at = line + file.getLineAndCharacterOfPosition(start).line - 1;
      return `${page.slice(root.length)}:${at} ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
    });
  });
  expect(complaints).toEqual([]);
}, 60_000);

function inImport({ name, kind }: ReturnType<typeof namesOf>[number]): string {
  return kind === 'type' ? `type ${name}` : name;
}

/** The modules as the compiler sees them, though they stand in no file. */
function programOf(texts: ReadonlyMap<string, string>): ts.Program {
  const config = ts.getParsedCommandLineOfConfigFile(
    `${root}tsconfig.json`,
    {},
    {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: () => {},
    },
  );
  // A person's own project is strict as a rule, not stricter.
  const looser = { noUnusedLocals: false, noUncheckedIndexedAccess: false };
  const options = { ...config!.options, ...looser };
  const host = ts.createCompilerHost(options);
  const { fileExists, getSourceFile } = host;
  host.fileExists = (path) => texts.has(path) || fileExists(path);
  host.getSourceFile = (path, language, ...rest) => {
    const text = texts.get(path);
    if (text === undefined) return getSourceFile(path, language, ...rest);
    return ts.createSourceFile(path, text, language);
  };
  return ts.createProgram([...texts.keys()], options, host);
}
