export interface TableRow {
  readonly head: string;
  readonly cells: readonly string[];
}

interface Props {
  readonly caption: string;
  /** The first heads the rows; a unit stands here, never in a cell. */
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
  /** The row that sums up. */
  readonly total?: TableRow | undefined;
}

/** A region that scrolls must be reachable without a mouse. */
const byKeyboard = { tabIndex: 0 } as const;

/** Figures in columns that line up. Where too wide, it scrolls in a region of its own. */
export function NumberTable({ caption, columns, rows, total }: Props) {
  return (
    <section class="scroller" aria-label={caption} {...byKeyboard}>
      <table class="numbers">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{rows.map(line)}</tbody>
        {total && <tfoot>{line(total)}</tfoot>}
      </table>
    </section>
  );
}

const line = ({ head, cells }: TableRow) => (
  <tr key={head}>
    <th scope="row">{head}</th>
    {cells.map((cell, i) => (
      <td key={i}>{cell}</td>
    ))}
  </tr>
);
