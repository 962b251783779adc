import { existsSync, globSync, readFileSync } from 'node:fs';
import { Application, TSConfigReader } from 'typedoc';
import { type PublicName, program, publicNames, root } from './surface.js';

const docs = `${root}docs-site/`;

/** Whether a name stands in the test that mirrors its file; a type in the test of types. */
export function testOf({ name, file, kind }: PublicName): { path: string; holds: boolean } {
  const mirror = `tests/core/${file.replace(/\.ts$/, '.test.ts')}`;
  const paths = kind === 'type' ? globSync('tests/types/*.test-d.ts', { cwd: root }) : [mirror];
  const texts = paths.map((path) =>
    existsSync(root + path) ? readFileSync(root + path, 'utf8') : '',
  );
  const holds = texts.some((text) => new RegExp(`\\b${name}\\b`).test(text));
  return { path: paths.join(' or '), holds };
}

/** A page written by hand: the names of its `uses:` list, and what stands under its first lines. */
export interface Page {
  readonly uses: readonly string[];
  readonly body: string;
}

export const pages: readonly Page[] = globSync('src/content/docs/**/*.{md,mdx}', { cwd: docs })
  .filter((page) => !/content[\\/]docs[\\/]api[\\/]/.test(page))
  .map((page) => {
    const [, head = '', body = ''] =
      /^---\n(.*?)\n---\n(.*)/s.exec(readFileSync(docs + page, 'utf8')) ?? [];
    const [, list = ''] = /^uses:\s*(\[[^\]]*\]|(?:\n\s+- .*)+)/m.exec(head) ?? [];
    return { uses: list.match(/[A-Za-z]\w*/g) ?? [], body };
  });

/** Whether a page lists a name, and shows it; a type shows in what is passed. */
export function isUsed({ name, kind }: PublicName): boolean {
  const shows = new RegExp(`\\b${name}\\b`);
  return pages.some(
    ({ uses, body }) => uses.includes(name) && (kind === 'type' || shows.test(body)),
  );
}

/** What the generated reference covers, and what TypeDoc warns of on the way. */
export async function reference(): Promise<{ names: ReadonlySet<string>; warnings: string[] }> {
  const { entryPoints } = JSON.parse(readFileSync(`${docs}typedoc.json`, 'utf8'));
  const app = await Application.bootstrap(
    {
      entryPoints: entryPoints.map((entry: string) => new URL(entry, `file://${docs}`).pathname),
      tsconfig: `${root}packages/core/tsconfig.json`,
      excludeInternal: true,
      skipErrorChecking: true, // the compiler's own check stands elsewhere
      disableSources: true,
      readme: 'none',
      validation: { notExported: true, invalidLink: true },
      logLevel: 'None',
    },
    [new TSConfigReader()],
  );
  const warnings: string[] = [];
  app.logger.warn = (text: string) => void warnings.push(text);
  const project = await app.convert();
  if (project === undefined) throw new Error('TypeDoc could not read the library.');
  app.validate(project);
  const all = project.children?.flatMap((child) => [child, ...(child.children ?? [])]) ?? [];
  return { names: new Set(all.map(({ name }) => name)), warnings };
}

/** Types that a caller makes; the others are options or come back from a function. */
export const madeByCallers: ReadonlySet<string> = new Set(
  publicNames
    .filter(({ kind, name }) => kind === 'type' && !name.endsWith('Options'))
    .map(({ name }) => name)
    .filter((name) => parameterTypes().some((type) => new RegExp(`\\b${name}\\b`).test(type))),
);

function parameterTypes(): readonly string[] {
  const checker = program.getTypeChecker();
  return publicNames
    .filter(({ kind }) => kind === 'function')
    .flatMap(({ symbol, declaration }) =>
      checker
        .getTypeOfSymbolAtLocation(symbol, declaration)
        .getCallSignatures()
        .flatMap(({ parameters }) =>
          parameters.map((it) => checker.typeToString(checker.getTypeOfSymbol(it))),
        ),
    );
}
