// Writes dist/schemas/<Type>.json: a JSON Schema for each public type, made from the type itself.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  createFormatter,
  createParser,
  createProgram,
  DEFAULT_CONFIG,
  SchemaGenerator,
} from 'ts-json-schema-generator';
import ts from 'typescript';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The public types that are data: no class, no type with a parameter to fill in. */
function dataTypes(entry: string): readonly string[] {
  const program = ts.createProgram([entry], { module: ts.ModuleKind.NodeNext, strict: true });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(entry);
  const module = source && checker.getSymbolAtLocation(source);
  if (module === undefined) throw new Error(`${entry} exports nothing.`);
  return checker
    .getExportsOfModule(module)
    .map((symbol) =>
      symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol,
    )
    .filter(({ flags }) => flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.TypeAlias))
    .filter(({ declarations = [] }) =>
      declarations.every(
        (node) => !('typeParameters' in node) || node.typeParameters === undefined,
      ),
    )
    .map(({ name }) => name);
}

/** The brand exists for the compiler only: in JSON a time is a whole number. */
const branded = (key: string, value: { description?: string }): unknown =>
  key === 'Hundredths' ? { type: 'integer', description: value.description } : value;

const folder = here('dist/schemas/');
mkdirSync(folder, { recursive: true });
for (const entry of ['src/index.ts', 'src/tables.ts'].map(here)) {
  const types = dataTypes(entry);
  const config = {
    ...DEFAULT_CONFIG,
    path: entry,
    tsconfig: here('tsconfig.json'),
    topRef: false,
    skipTypeCheck: true,
  };
  const program = createProgram(config);
  for (const type of types) {
    // A parser of its own for each: a shared one loses track of types that hold themselves.
    const parser = createParser(program, config);
    const generator = new SchemaGenerator(program, parser, createFormatter(config), config);
    const $id = `https://backhalf.example/schemas/${type}.json`;
    const schema = { $id, ...generator.createSchema(type) };
    writeFileSync(`${folder}${type}.json`, `${JSON.stringify(schema, branded, 2)}\n`);
  }
  console.log(`${types.length} schemas of ${entry.slice(here('.').length)}`);
}
