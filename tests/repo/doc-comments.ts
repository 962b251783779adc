import ts from 'typescript';
import { checker, namesIn, type PublicName, summaryOf } from './surface.js';

const UNIT =
  /\b(hundredths?|seconds?|metres?|yards?|units?|per|ratio|count(s|ed)?|number of|share|degrees)\b|%/i;
const codes = namesIn('PacingErrorCode');

/** What a public name's doc comment lacks; empty where it is complete. */
export function gapsIn({ kind, symbol, declaration }: PublicName): readonly string[] {
  if (kind === 'function') return gapsInFunction(symbol, declaration as ts.FunctionDeclaration);
  const summary = summaryOf(symbol) === '' ? ['has no summary'] : [];
  return [...summary, ...gapsInFields(symbol)];
}

/** The form: summary, unit of each parameter and of the result, codes thrown, an example that states a result. */
function gapsInFunction(symbol: ts.Symbol, declaration: ts.FunctionDeclaration): string[] {
  const gaps: string[] = [];
  const tags = tagsOf(declaration);
  const texts = (tag: string) => tags.filter(({ name }) => name === tag).map(({ text }) => text);
  const unless = (fine: boolean, gap: string) => fine || gaps.push(gap);

  unless(summaryOf(symbol) !== '', 'has no summary');
  for (const parameter of declaration.parameters) {
    const name = parameter.name.getText();
    const text = texts('param').find((said) => said.startsWith(`${name} - `));
    unless(text !== undefined, `has no "@param ${name} - …"`);
    const type = parameter.type?.getText() ?? '';
    if (text !== undefined) unless(unitSaid(type, text), `says no unit for @param ${name}`);
  }
  for (const text of texts('param')) {
    const [name] = text.split(' ');
    const known = declaration.parameters.some((parameter) => parameter.name.getText() === name);
    unless(known, `has a "@param ${name}" that is no parameter`);
  }

  const [returns = ''] = texts('returns');
  unless(returns !== '', 'has no @returns');
  const type = declaration.type?.getText() ?? '';
  if (returns !== '') unless(unitSaid(type, returns), 'says no unit in @returns');

  const throws = texts('throws').join(' ');
  const quoted = [...throws.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)].map(([, code = '']) => code);
  const named = quoted.length > 0 || /\bcodes of \{@link|\bnever\b/.test(throws);
  unless(named, 'has no @throws with a code, or "never"');
  for (const code of quoted) {
    unless(codes.includes(code), `says that it throws \`${code}\`, which is no code`);
  }
  unless(
    texts('example').some((text) => text.includes('// => ')),
    'has no @example that states a result',
  );
  return gaps;
}

/** Fields and methods, down into those written in place; constants (`name = '…'`) speak for themselves. */
function gapsInFields(symbol: ts.Symbol): string[] {
  return [...(symbol.members?.values() ?? [])].flatMap((member) => {
    const node = member.declarations?.[0];
    if (node === undefined || !isField(node) || node.initializer !== undefined) return [];
    const said = summaryOf(member);
    if (said === '') return [`.${member.name} has no doc comment`];
    if (node.type !== undefined && ts.isTypeLiteralNode(node.type)) {
      return gapsInFields(checker.getTypeAtLocation(node.type).symbol);
    }
    return unitSaid(node.type?.getText() ?? '', said) ? [] : [`.${member.name} says no unit`];
  });
}

function isField(node: ts.Declaration): node is ts.PropertyDeclaration {
  return ts.isPropertySignature(node) || ts.isPropertyDeclaration(node);
}

/** Where a number is meant, a unit must be said. */
function unitSaid(type: string, text: string): boolean {
  return !/\b(Hundredths|number)\b/.test(type) || UNIT.test(text);
}

/** The tags as written: TypeScript's own parser ends `@throws {@link …}` at the brace. */
function tagsOf(declaration: ts.Node): readonly { name: string; text: string }[] {
  const comment = ts.getJSDocCommentsAndTags(declaration).find(ts.isJSDoc)?.getText() ?? '';
  const lines = comment.replace(/^\/\*\*|\s*\*\/$/g, '').replace(/^\s*\* ?/gm, '');
  return lines
    .split(/^@/m)
    .slice(1)
    .map((tag) => {
      const [name = ''] = tag.split(/\s/);
      return { name, text: tag.slice(name.length).trim().replace(/\s+/g, ' ') };
    });
}
