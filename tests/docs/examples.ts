import { readFileSync, writeFileSync } from 'node:fs';
import { inspect, isDeepStrictEqual } from 'node:util';
import * as core from 'backhalf';
import * as tables from 'backhalf/tables';
import { transformSync } from 'esbuild';
import ts from 'typescript';

const backhalf = { ...core, ...tables };

/** A piece of code in a page or a doc comment that states what its lines give. */
export interface Example {
  readonly file: string;
  /** Line of the first line of code, from 1. */
  readonly line: number;
  readonly code: string;
}

/** What an example states on a line, and what the code gives there. */
export interface Outcome {
  readonly line: number;
  readonly stated: string;
  readonly actual: unknown;
}

/** The `@example` blocks of a source file. */
export function examplesInComments(file: string): readonly Example[] {
  const found: Example[] = [];
  let open: { line: number; lines: string[] } | null = null;
  const close = () => {
    if (open !== null) found.push({ file, line: open.line, code: open.lines.join('\n') });
    open = null;
  };
  readFileSync(file, 'utf8')
    .split('\n')
    .forEach((text, i) => {
      const comment = /^\s*\* ?(?!\/)(.*)$/.exec(text)?.[1];
      if (comment === undefined || comment.startsWith('@')) close();
      if (comment?.startsWith('@example')) open = { line: i + 2, lines: [] };
      else if (comment !== undefined) open?.lines.push(comment);
    });
  return found;
}

/** The `ts` and `js` fences of a page, but those marked `no-run`. */
export function examplesInFences(file: string): readonly Example[] {
  const text = readFileSync(file, 'utf8');
  const fences = [...text.matchAll(/^```(?:ts|js)\b([^\n]*)\n(.*?)^```/gms)];
  return fences
    .filter(([, info = '']) => !info.includes('no-run'))
    .map(({ 2: code = '', index }) => ({
      file,
      line: text.slice(0, index).split('\n').length + 1,
      // The page shows the import once; here the public names are in scope already.
      code: code.replace(/^import .* from 'backhalf(?:\/tables)?';$/gm, ''),
    }));
}

/** Runs an example with every public name in scope; each `// => …` reports the statement before it. */
export function run(example: Example): readonly Outcome[] {
  const outcomes: Outcome[] = [];
  const report = (line: number, stated: string, actual: unknown) =>
    outcomes.push({ line: example.line + line, stated, actual });
  const { code } = transformSync(withReports(example.code), { loader: 'ts', target: 'es2022' });
  const names = Object.keys(backhalf);
  new Function('__report', ...names, code)(report, ...Object.values(backhalf));
  const marks = example.code.match(/\/\/ => /g)?.length ?? 0;
  if (marks !== outcomes.length) {
    throw new Error(`${marks} results are stated, but ${outcomes.length} were reached.`);
  }
  return outcomes;
}

/** Puts a report after (or around) each statement that is followed by a stated result. */
function withReports(code: string): string {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.Latest, true);
  const edits: { at: number; to: number; text: string }[] = [];
  const visit = (node: ts.Node): void => {
    const mark = /^[ \t]*\n?[ \t]*\/\/ => (.*)/.exec(code.slice(node.end));
    if (mark !== null && (ts.isExpressionStatement(node) || ts.isVariableStatement(node))) {
      const line = source.getLineAndCharacterOfPosition(node.end + mark[0].indexOf('//')).line;
      const call = (what: string) => `__report(${line}, ${JSON.stringify(mark[1])}, ${what});`;
      if (ts.isExpressionStatement(node)) {
        edits.push({ at: node.getStart(), to: node.end, text: call(shownBy(node.expression)) });
      } else {
        const name = node.declarationList.declarations[0]?.name.getText() ?? '';
        edits.push({ at: node.end, to: node.end, text: call(name) });
      }
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return edits.reduceRight(
    (text, { at, to, text: put }) => text.slice(0, at) + put + text.slice(to),
    code,
  );
}

/** What a statement shows: its value, or what it prints. */
function shownBy(expression: ts.Expression): string {
  const printed = /^console\.log\((.*)\)$/s.exec(expression.getText())?.[1];
  return printed ?? expression.getText();
}

/** The stated text as a value. */
export function statedValue(stated: string): unknown {
  return new Function(`return (${stated});`)();
}

/** Whether an example states what the code gives. */
export function holds(stated: string, actual: unknown): boolean {
  try {
    return isDeepStrictEqual(statedValue(stated), actual);
  } catch {
    return false; // what is stated is no value at all
  }
}

/** Writes the true value in place of what an example states. */
export function rewrite(file: string, line: number, actual: unknown): void {
  const lines = readFileSync(file, 'utf8').split('\n');
  const value = inspect(actual, { depth: null, breakLength: Infinity })
    .replaceAll('[ ', '[')
    .replaceAll(' ]', ']');
  lines[line - 1] = (lines[line - 1] ?? '').replace(/\/\/ => .*$/, () => `// => ${value}`);
  writeFileSync(file, lines.join('\n'));
}
