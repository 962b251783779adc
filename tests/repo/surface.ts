import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const root = fileURLToPath(new URL('../..', import.meta.url));
export const source = `${root}packages/core/src/`;

/** A name that the library gives out. */
export interface PublicName {
  readonly name: string;
  readonly kind: 'function' | 'class' | 'constant' | 'type';
  /** Where it is declared, from the source folder: `time/pace.ts`. */
  readonly file: string;
  readonly symbol: ts.Symbol;
  readonly declaration: ts.Declaration;
}

/** The entry points, as a person imports them. */
export const entries = { backhalf: 'index.ts', 'backhalf/tables': 'tables.ts' } as const;
export type Entry = keyof typeof entries;

const config = ts.getParsedCommandLineOfConfigFile(`${root}packages/core/tsconfig.json`, {}, {
  ...ts.sys,
  onUnRecoverableConfigFileDiagnostic: (problem) => {
    throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
  },
} as ts.ParseConfigFileHost);

/** The library as TypeScript sees it. */
export const program = ts.createProgram(
  Object.values(entries).map((file) => source + file),
  config?.options ?? {},
);
export const checker = program.getTypeChecker();

/** Every public name of an entry point, in the order of the alphabet. */
export function namesOf(entry: Entry): readonly PublicName[] {
  const module = program.getSourceFile(source + entries[entry])!;
  return checker
    .getExportsOfModule(checker.getSymbolAtLocation(module)!)
    .map((exported) => {
      const aliased = (exported.flags & ts.SymbolFlags.Alias) !== 0;
      const symbol = aliased ? checker.getAliasedSymbol(exported) : exported;
      const declaration = symbol.declarations![0]!;
      const file = relative(source, declaration.getSourceFile().fileName).replaceAll('\\', '/');
      return { name: exported.name, kind: kindOf(symbol), file, symbol, declaration };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Every public name of every entry point. */
export const publicNames = (Object.keys(entries) as Entry[]).flatMap(namesOf);

function kindOf({ flags }: ts.Symbol): PublicName['kind'] {
  if ((flags & ts.SymbolFlags.Function) !== 0) return 'function';
  if ((flags & ts.SymbolFlags.Class) !== 0) return 'class';
  return (flags & ts.SymbolFlags.Variable) !== 0 ? 'constant' : 'type';
}

/** The members of a union of names, such as `PacingErrorCode`. */
export function namesIn(type: string): readonly string[] {
  const found = publicNames.find(({ name }) => name === type)!;
  const union = checker.getDeclaredTypeOfSymbol(found.symbol);
  if (!union.isUnion()) throw new Error(`${type} is no union.`);
  return union.types.map((member) => (member as ts.StringLiteralType).value);
}

/** The summary of a name's doc comment. */
export function summaryOf(symbol: ts.Symbol): string {
  return ts.displayPartsToString(symbol.getDocumentationComment(checker));
}
