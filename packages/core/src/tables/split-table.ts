import { choiceOf, fieldsOf, textOf } from '../check.js';
import { attempt, PacingError, type PacingErrorCode } from '../errors.js';
import { type Mark, type Splits, splitsFromMarks } from '../splits/splits.js';
import { type Hundredths, hundredths } from '../time/hundredths.js';
import { parseTime } from '../time/parse-time.js';
import { type Line, linesOf, type Separator, separatorOf } from './cells.js';
import { type Columns, columnsOf, columnsWithout } from './columns.js';

/** A swim that a table holds. */
export interface TableSwim {
  /** The number of the line it (or its first mark) stands on, a count from 1. */
  readonly line: number;
  /** The swimmer's name as written; empty where the table has none. */
  readonly name: string;
  /** The swim's number or rep as written; empty where the table has none. */
  readonly rep: string;
  /** The swim; distances in the pool's unit, times in hundredths of a second. */
  readonly splits: Splits;
}

/** A line that could not be read, and why. */
export interface RefusedLine {
  /** The line's number, a count from 1. */
  readonly line: number;
  /** Its cells as written. */
  readonly cells: readonly string[];
  /** Why, as a stable name. */
  readonly code: PacingErrorCode;
  /** Why, in one sentence a coach can read. */
  readonly message: string;
}

/** All that a table held: what was read, and what was refused, line by line. */
export interface SplitTable {
  /** The swims that were read, in the order of the table. */
  readonly swims: readonly TableSwim[];
  /** The lines that were refused, in the order of the table. */
  readonly refused: readonly RefusedLine[];
  /** One swim a line, or one mark a line. */
  readonly layout: 'wide' | 'long';
  /** Whether the times were taken as laps or as times since the start. */
  readonly times: 'laps' | 'cumulative';
  /** What stood between the cells. */
  readonly separator: Separator;
}

/** What the table itself does not tell. */
export interface SplitTableOptions {
  /** Distance of a lap in the pool's unit; needed only where no header tells the distances. */
  readonly every?: number;
  /** Laps, or times since the start; found out from the times unless given. */
  readonly times?: 'laps' | 'cumulative';
}

interface RawSwim {
  readonly line: Line;
  readonly name: string;
  readonly rep: string;
  readonly marks: { readonly distance: number; readonly time: Hundredths }[];
  /** Whether a cell between two times is empty. */
  readonly gap: boolean;
}

/**
 * Reads a table of splits: pasted from a spreadsheet or exported as CSV or TSV. It has an entry point of its
 * own: `import { readSplitTable } from 'backhalf/tables'`.
 *
 * *Wide*: one swim a line, one column a mark, the header naming the distances (`Swimmer, 50, 100`).
 * *Long*: one mark a line, with columns `Distance` and `Time`, and `Swimmer` and `Rep` to tell the
 * swims apart. Cells are parted by tabs, semicolons, bars or commas, and times may have decimal
 * points or commas, as {@link parseTime} reads them. A line that cannot be read is handed back with its
 * reason; it never costs another line.
 *
 * @param text - The table, at most ten million characters.
 * @param options - `every`: the distance of a lap in the pool's unit, where no header tells; `times`:
 *   laps or times since the start, found out from how they grow unless given.
 * @returns The swims read and the lines refused; distances in the pool's unit, times in hundredths of a
 *   second.
 * @throws `PacingError` `wrong-shape` where it is not text; `out-of-range` where neither header
 *   nor `every` tells the distances, or the text is too long; `unknown-choice`.
 * @example
 * const table = readSplitTable('Swimmer;50;100\nMara Quill;31,5;33,5\nIvo Tarn;32,1;soon');
 * table.swims[0].splits.marks.at(-1); // => { distance: 100, time: 6500 }
 * table.times; // => 'laps'
 * table.refused[0].line; // => 3
 */
export function readSplitTable(text: string, options: SplitTableOptions = {}): SplitTable {
  const written = textOf(text, 'The table');
  const { every, times: wanted } = fieldsOf(options, 'The options');
  if (written.length > 1e7) {
    throw new PacingError(
      'out-of-range',
      'The table is over ten million characters; cut it.',
      null,
    );
  }
  const separator = separatorOf(written);
  const lines = linesOf(written, separator);
  const header = columnsOf(lines[0]?.cells ?? [], every === undefined);
  const columns = header ?? columnsWithout(lines[0]?.cells ?? [], every);

  const refused: RefusedLine[] = [];
  const raw = (columns.layout === 'wide' ? wideSwims : longSwims)(
    lines.slice(header === null ? 0 : 1),
    columns,
    refused,
  );
  const times =
    wanted === undefined ? timesOf(raw) : choiceOf(wanted, ['laps', 'cumulative'], 'The times');
  const swims = raw.flatMap((swim): TableSwim[] => {
    const { line, name, rep } = swim;
    const splits = attempt(() => splitsFromMarks(marksOf(swim, times)));
    if (splits.ok) return [{ line: line.number, name, rep, splits: splits.value }];
    refused.push(refusal(line, splits.error));
    return [];
  });
  refused.sort((a, b) => a.line - b.line);
  return { swims, refused, layout: columns.layout, times, separator };
}

const refusal = ({ number, cells }: Line, { code, message }: PacingError): RefusedLine => ({
  line: number,
  cells,
  code,
  message,
});

const nameIn = ({ cells }: Line, { names, rep }: Columns) => ({
  name: names
    .map((cell) => cells[cell] ?? '')
    .join(' ')
    .trim(),
  rep: cells[rep] ?? '',
});

function wideSwims(lines: readonly Line[], columns: Columns, refused: RefusedLine[]): RawSwim[] {
  return lines.flatMap((line): RawSwim[] => {
    const read = attempt(() => {
      const given = columns.times.filter(({ cell }) => (line.cells[cell] ?? '') !== '');
      const marks = given.map(({ cell, distance }) => ({
        distance,
        time: parseTime(line.cells[cell] ?? ''),
      }));
      const gap = columns.times[given.length - 1]?.cell !== given.at(-1)?.cell;
      return { line, ...nameIn(line, columns), marks, gap };
    });
    if (!read.ok) refused.push(refusal(line, read.error));
    return read.ok ? [read.value] : [];
  });
}

function longSwims(lines: readonly Line[], columns: Columns, refused: RefusedLine[]): RawSwim[] {
  const swims = new Map<string, RawSwim>();
  for (const line of lines) {
    const read = attempt(() => ({
      distance: Number(
        (line.cells[columns.distance] ?? '').replace(',', '.').replace(/\s*[a-z]+$/i, ''),
      ),
      time: parseTime(line.cells[columns.time] ?? ''),
    }));
    if (!read.ok) {
      refused.push(refusal(line, read.error));
      continue;
    }
    const who = nameIn(line, columns);
    const key = JSON.stringify(who);
    const swim = swims.get(key) ?? { line, ...who, marks: [], gap: false };
    swim.marks.push(read.value);
    swims.set(key, swim);
  }
  return [...swims.values()];
}

/** Times since the start grow with the distance, laps stay alike: the middle of both tells. */
function timesOf(swims: readonly RawSwim[]): 'laps' | 'cumulative' {
  const votes = swims.map(({ marks }) => {
    const [first, last] = [marks[0], marks.at(-1)];
    if (first === undefined || last === undefined || marks.length < 2) return 0;
    const grown = last.time / first.time > Math.sqrt(last.distance / first.distance);
    return grown ? 1 : -1;
  });
  return votes.reduce((sum: number, vote) => sum + vote, 0) > 0 ? 'cumulative' : 'laps';
}

function marksOf({ marks, gap, line }: RawSwim, times: 'laps' | 'cumulative'): readonly Mark[] {
  if (gap && times === 'laps') {
    const message =
      'A lap is missing between two others; fill it in, or give times since the start.';
    throw new PacingError('no-mark-there', message, line.cells);
  }
  let total = 0;
  return marks.map(({ distance, time }) => {
    total = times === 'laps' ? total + time : time;
    return { distance, time: hundredths(total) };
  });
}
