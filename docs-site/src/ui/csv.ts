/** Rows as comma-separated text; what a spreadsheet would take for a formula is defused. */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return `${rows.map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(text: string): string {
  const number = /^[+−-]?[\d:.,]+$/.test(text);
  const plain = number ? text.replace('−', '-') : text.replace(/^(?=[=+@\t−-])/, "'");
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
