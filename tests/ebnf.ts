// A small reader of ISO/IEC 14977 grammars, and a maker of random sentences: as far as the page on
// set notation needs it.

type Node =
  | { readonly type: 'terminal' | 'name' | 'special'; readonly text: string }
  | { readonly type: 'sequence' | 'choice'; readonly parts: readonly Node[] }
  | { readonly type: 'option' | 'repeat'; readonly part: Node };

/** Productions by name, in the order of the page. */
export type Grammar = ReadonlyMap<string, Node>;

const TOKEN = /"([^"]*)"|'([^']*)'|\?([^?]*)\?|([a-z]+)|([=,|;()[\]{}])/g;

/** Reads productions: `name = a, { b } | [ c ] ;`. */
export function readGrammar(text: string): Grammar {
  const tokens = [...text.matchAll(TOKEN)];
  let at = 0;
  const sign = () => tokens[at]?.[5];
  const expectSign = (wanted: string) => {
    if (sign() !== wanted) throw new Error(`Expected ${wanted}, found ${tokens[at]?.[0]}.`);
    at += 1;
  };

  const grammar = new Map<string, Node>();
  while (at < tokens.length) {
    const name = tokens[at++]?.[4];
    if (name === undefined) throw new Error('A production begins with its name.');
    expectSign('=');
    grammar.set(name, choice());
    expectSign(';');
  }
  return grammar;

  function choice(): Node {
    const parts = [sequence()];
    while (sign() === '|') {
      at += 1;
      parts.push(sequence());
    }
    return { type: 'choice', parts };
  }

  function sequence(): Node {
    const parts = [factor()];
    while (sign() === ',') {
      at += 1;
      parts.push(factor());
    }
    return { type: 'sequence', parts };
  }

  function factor(): Node {
    const [found, double, single, special, name, opening] = tokens[at++] ?? [];
    const terminal = double ?? single;
    if (terminal !== undefined) return { type: 'terminal', text: terminal };
    if (special !== undefined) return { type: 'special', text: special.trim() };
    if (name !== undefined) return { type: 'name', text: name };
    const inner = choice();
    if (opening === '(') {
      expectSign(')');
      return inner;
    }
    if (opening === '[') {
      expectSign(']');
      return { type: 'option', part: inner };
    }
    if (opening !== '{') throw new Error(`Unexpected ${found}.`);
    expectSign('}');
    return { type: 'repeat', part: inner };
  }
}

/** Every quoted text of a grammar. */
export function terminalsOf(grammar: Grammar): readonly string[] {
  const inside = (node: Node): readonly string[] => {
    if ('parts' in node) return node.parts.flatMap(inside);
    if ('part' in node) return inside(node.part);
    return node.type === 'terminal' ? [node.text] : [];
  };
  return [...grammar.values()].flatMap(inside);
}

const DISTANCES = ['25', '50', '50', '100', '100', '200', '400'];
const CLOCKS = ['1:30', ':50', '2:05', "1'40", '6:00', '1:05.3', '12:30'];

/** A random sentence: one blank between two signs, and no production more than 40 deep. */
export function sentence(grammar: Grammar, start: string, next: () => number): string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  const write = (node: Node, depth: number): string => {
    const deep = depth > 24;
    switch (node.type) {
      case 'terminal':
        return node.text;
      case 'special':
        if (node.text === 'line end') return '\n';
        if (node.text === 'seconds') return pick(['5', '15', '90', '31.5']);
        if (node.text.startsWith('minutes and')) return pick(CLOCKS);
        return next() < 0.3 ? pick(['1', '2', '4', '8']) : pick(DISTANCES);
      case 'name':
        return write(grammar.get(node.text)!, depth + 1);
      case 'choice':
        return write(deep ? node.parts[0]! : pick(node.parts), depth + 1);
      case 'sequence':
        return node.parts.map((part) => write(part, depth + 1)).join(' ');
      case 'option':
        return next() < 0.3 && !deep ? write(node.part, depth + 1) : '';
      case 'repeat': {
        let written = '';
        while (next() < 0.3 && !deep) written += ` ${write(node.part, depth + 1)}`;
        return written;
      }
    }
  };
  return write(grammar.get(start)!, 0);
}
