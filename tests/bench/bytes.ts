import { build } from 'esbuild';
import { gzipSync } from 'fflate';
import { type Entry, entries, namesOf, source } from '../repo/surface.js';

/** What importing `what` alone costs a page, minified and gzipped, in bytes. */
export async function bytesOf(what: string, entry: Entry = 'backhalf'): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: `export ${what} from './${entries[entry]}';`, resolveDir: source },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
  });
  // Node's own gzip differs between machines by a few bytes; this one does not.
  return gzipSync(outputFiles[0]!.contents, { level: 9, mtime: 0 }).length;
}

/** The cost of each name imported alone, as a table. */
export async function bytesTable(): Promise<string> {
  const rows = ['| imported alone | bytes |', '| --- | ---: |'];
  for (const entry of Object.keys(entries) as Entry[]) {
    rows.push(`| **all of \`${entry}\`** | **${await bytesOf('*', entry)}** |`);
    for (const { name, kind } of namesOf(entry)) {
      if (kind !== 'type') rows.push(`| \`${name}\` | ${await bytesOf(`{ ${name} }`, entry)} |`);
    }
  }
  return [
    '# What each name costs a page\n',
    'Minified and gzipped, with all it needs. Written by `npm run report`; the diff is read.\n',
    ...rows,
    '',
  ].join('\n');
}
