import { NumberTable, ResultCard } from '~/ui';
import { clockText } from '~/ui/wording';
import { barsOf, rowsOf, type WriteResult } from './model';
import { Timeline } from './Timeline';

/** More rows than this are no table any more; the file of the whole has them all. */
const mostRows = 60;

export function Result({ result }: { readonly result: WriteResult }) {
  const { totals, unit, kept, readings, sentence, cautions } = result;
  const { distance, booked, duration, swimTime, rest, blocks } = totals;
  const bars = barsOf(totals);
  const table = tableOf(result);
  return (
    <ResultCard
      headline={{
        label: 'Distance',
        figure: `${distance} ${unit}`,
        note: booked === null ? undefined : `booked for ${clockText(booked)}`,
      }}
      beside={[
        { label: 'First start to last finish', figure: clockText(duration) },
        { label: 'Swim time', figure: clockText(swimTime) },
        { label: 'Rest in between', figure: clockText(rest) },
      ]}
      cautions={cautions}
      sentence={sentence}
    >
      <section class="kept" aria-label="The set as it was read">
        <p class="kept-title">As it was read</p>
        <pre>{kept}</pre>
        {readings.length > 0 && (
          <ul>
            {readings.map(({ code, message }) => (
              <li key={code}>{message}</li>
            ))}
          </ul>
        )}
        <p>
          <a href="/library/set-grammar/">All that is read, and how</a>
        </p>
      </section>
      {bars.length > 0 && booked !== null && (
        <Timeline bars={bars} end={booked} finding={sentence} />
      )}
      <NumberTable
        {...table}
        caption={
          table.rows.length > mostRows
            ? `The first ${mostRows} of ${table.rows.length} parts of the clock`
            : 'The clock of the set'
        }
        rows={table.rows.slice(0, mostRows)}
      />
      {blocks.length > 1 && (
        <div class="worded">
          <NumberTable
            caption="Its parts"
            columns={['Part', `Distance, ${unit}`, 'Over at']}
            rows={blocks.map(({ name, distance: far, end }, i) => ({
              head: `${i + 1} ${name ?? 'no heading'}`,
              cells: [String(far), clockText(end)],
            }))}
          />
        </div>
      )}
    </ResultCard>
  );
}

/** The clock as a table, swims that are alike in one row. */
export const tableOf = ({ totals, unit }: WriteResult) => ({
  columns: ['From', `Swims, ${unit}`, 'Swim', 'Rest after it'],
  rows: rowsOf(totals).map(({ start, reps, distance, swim, rest }) => ({
    head: clockText(start),
    cells: [`${reps} × ${distance}`, clockText(swim), clockText(rest)],
  })),
});
