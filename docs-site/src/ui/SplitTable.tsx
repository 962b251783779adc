import { formatTime, lapsOf, pacingProfile, type Splits } from 'backhalf';
import { NumberTable } from './NumberTable';
import { distanceText, signedPercent } from './wording';

interface Props {
  readonly caption: string;
  /** Swims over the same marks. */
  readonly swims: readonly Splits[];
  /** One name a swim. */
  readonly names: readonly string[];
  readonly unit: 'm' | 'yd';
}

/** The laps of one swim with its running time, or of several side by side. */
export function SplitTable({ caption, swims, names, unit }: Props) {
  const { columns, rows, total } = splitRows(swims, names, unit);
  return <NumberTable caption={caption} columns={columns} rows={rows} total={total} />;
}

/** What {@link SplitTable} shows, as plain text: for the file that a person takes along. */
export function splitRows(swims: readonly Splits[], names: readonly string[], unit: 'm' | 'yd') {
  const [swim] = swims;
  const marks = swim?.marks ?? [];
  const laps = swims.map((one) => lapsOf(one));
  const finishes = swims.map((one) => one.marks.at(-1)?.time);
  const time = (t: (typeof finishes)[number]) => (t === undefined ? '' : formatTime(t));
  const distance = `Distance (${unit})`;
  const row = (cellsOf: (i: number) => readonly string[]) =>
    marks.map((mark, i) => ({ head: distanceText(mark.distance), cells: cellsOf(i) }));

  if (swims.length > 1 || swim === undefined) {
    return {
      columns: [distance, ...names],
      rows: row((i) => laps.map((of) => time(of[i]))),
      total: { head: 'Total', cells: finishes.map(time) },
    };
  }
  const against = marks.length < 3 ? null : pacingProfile(swim).againstMean;
  const more = (text: string) => (against === null ? [] : [text]);
  return {
    columns: [distance, 'Lap', 'Time so far', ...more('Against mean (%)')],
    rows: row((i) => [
      time(laps[0]?.[i]),
      time(marks[i]?.time),
      ...more(signedPercent(against?.[i] ?? 0)),
    ]),
    total: { head: 'Total', cells: [time(finishes[0]), '', ...more('')] },
  };
}
