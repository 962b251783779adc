import { publicNames } from './surface.js';

/** The error codes in a function's `@throws`, with those of the functions whose codes it refers to. */
export function codesTold(name: string, seen: readonly string[] = []): readonly string[] {
  const found = publicNames.find((it) => it.name === name && it.kind === 'function');
  if (found === undefined || seen.includes(name)) return [];
  const source = found.declaration.getSourceFile().text;
  const comment = source.slice(found.declaration.pos, found.declaration.getStart());
  const throws = /^ \* @throws (.*?)(?=^ \* @|^ \*\/)/ms.exec(comment)?.[1] ?? '';
  const codes = [...throws.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)].map(([, code = '']) => code);
  const others = [...throws.matchAll(/\{@link (\w+)\}/g)].map(([, other = '']) => other);
  return [...codes, ...others.flatMap((other) => codesTold(other, [...seen, name]))];
}
