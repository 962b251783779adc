import Papa from 'papaparse';

/** One line of a table, cut into cells. */
export interface Line {
  /** The line's number in the text, a count from 1. */
  readonly number: number;
  /** Its cells, without the blanks around them. */
  readonly cells: readonly string[];
}

/** What may stand between two cells. */
export type Separator = '\t' | ';' | '|' | ',';

/** The separator of a table. A comma is the last guess: beside any other it is a decimal comma. */
export function separatorOf(text: string): Separator {
  const separators = ['\t', ';', '|'] as const;
  return separators.find((separator) => text.includes(separator)) ?? ',';
}

/** Cuts a text into lines of cells; quotes are honoured, empty lines left out. */
export function linesOf(text: string, separator: Separator): readonly Line[] {
  const lines: Line[] = [];
  let number = 1;
  let from = 0;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    step: ({ data, meta }) => {
      const cells = data.map((cell) => cell.trim());
      if (cells.some((cell) => cell !== '')) lines.push({ number, cells });
      // A quoted cell may hold line breaks, so lines are counted in the text, not in the rows.
      number += text.slice(from, meta.cursor).match(/\r\n|\r|\n/g)?.length ?? 0;
      from = meta.cursor;
    },
  });
  return lines;
}
