import { formatTime, type Hundredths, type SetReading } from 'backhalf';

/** The reps of a set as a table: figures as text; `rep` is what one of them is called. */
export function repRows(reading: SetReading, rep = 'Rep') {
  const time = (t: Hundredths | null | undefined) => (t == null ? '–' : formatTime(t));
  const difference = (t: Hundredths | undefined) =>
    t === undefined ? '–' : formatTime(t, { signed: true });
  return {
    columns: [rep, 'First half', 'Second half', 'Second − first', `${rep} time`, 'Rest'],
    rows: reading.reps.map(({ time: whole, halves, comparison, rest }, i) => ({
      head: String(i + 1),
      cells: [
        time(halves?.first),
        time(halves?.second),
        difference(comparison?.difference),
        time(whole),
        time(rest),
      ],
    })),
    total: {
      head: 'Mean',
      cells: [
        time(reading.halves?.first),
        time(reading.halves?.second),
        difference(reading.comparison?.difference),
        time(reading.average),
        time(reading.rest),
      ],
    },
  };
}
