import ts from 'typescript';
import { type Entry, entries, namesOf, program } from './surface.js';

/** What the library promises: each public name with its signature, nothing of how it is done. */
export function apiReport(): string {
  const declared = declarations();
  const parts = (Object.keys(entries) as Entry[]).map((entry) => {
    const names = namesOf(entry).map(({ name, file }) => {
      const text = declared.get(`${file} ${name}`);
      if (text === undefined) throw new Error(`No declaration of ${name} in ${file}.`);
      return text;
    });
    return `## ${entry}\n\n\`\`\`ts no-run\n${names.join('\n')}\n\`\`\`\n`;
  });
  return [
    '# What the library promises\n',
    'Written by `npm run report`; the diff is read.\n',
    ...parts,
  ].join('\n');
}

/** Every exported statement of the declaration files, by file and name. */
function declarations(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const options = {
    ...program.getCompilerOptions(),
    noEmit: false,
    emitDeclarationOnly: true,
    removeComments: true,
  };
  const quiet = ts.createProgram(program.getRootFileNames(), options);
  const base = ts.sys.resolvePath(`${options.rootDir}`);
  quiet.emit(
    undefined,
    (path, text) => {
      const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
      const name = path.slice(base.length + 1).replace(/\.d\.ts$/, '.ts');
      for (const statement of file.statements) {
        for (const declared of namesDeclared(statement)) {
          found.set(`${name} ${declared}`, statement.getText().replace(/^export (declare )?/, ''));
        }
      }
    },
    undefined,
    true,
  );
  return found;
}

function namesDeclared(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement)) {
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  }
  const { name } = statement as ts.Statement & { name?: ts.Node };
  return name === undefined ? [] : [name.getText()];
}
