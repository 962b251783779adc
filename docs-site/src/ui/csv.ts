import type { TableRow } from './NumberTable';

/** The result as a table, its first row the headings, and the file’s name without ending. */
export interface Csv {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}

/** A table’s lines, the headings first. */
export const linesOf = ({ columns, rows }: Table): readonly (readonly string[])[] => [
  columns,
  ...rows.map(({ head, cells }) => [head, ...cells]),
];

/** Rows as comma-separated text; what a spreadsheet would take for a formula is defused. */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(text: string): string {
  const number = /^[+−-]?[\d:.,]+$/.test(text);
  const plain = number ? text.replace('−', '-') : text.replace(/^(?=[=+@\t−-])/, "'");
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
