/** A place in a text, shown in print: the line it is in, and a mark below the character. */
export interface Slip {
  /** Where it is, in words. */
  readonly place: string;
  /** The line, or what of it stands near. */
  readonly line: string;
  /** Blanks up to the character, and the mark. */
  readonly mark: string;
}

const around = 24;

/** Shows the place of a character, a count from 0. */
export function slipAt(text: string, position: number): Slip {
  const before = text.slice(0, position);
  const lines = before.split(/\r\n|\r|\n/);
  const column = (lines.at(-1) ?? '').length;
  const line = text.slice(position - column).split(/[\r\n]/, 1)[0] ?? '';
  const from = Math.max(0, column - around);
  const shown = line.slice(from, column + around).replace(/[\p{C}\s]/gu, ' ');
  return {
    place: `Line ${lines.length}, character ${column + 1}`,
    line: `${from > 0 ? '…' : ''}${shown}${line.length > column + around ? '…' : ''}`,
    mark: `${' '.repeat(column - from + (from > 0 ? 1 : 0))}▲`,
  };
}
