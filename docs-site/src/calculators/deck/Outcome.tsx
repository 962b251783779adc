import { NumberTable, type ResultCardProps } from '~/ui';
import { type Csv, linesOf } from '~/ui/csv';
import type { DeckFields } from './fields';
import type { DeckView } from './model';
import { repTable, sentenceOf, swimmerResults } from './result';
import { TouchList } from './TouchList';
import { missingText, touchRows } from './touch-rows';
import type { Word } from './touches-text';

/** What a timed set shows; nothing while there is no touch. */
export function outcomeOf(
  fields: DeckFields,
  { pool, plan, reading, taps }: DeckView,
  onWord: (index: number, word: Word | 'nobody' | null) => void,
): ResultCardProps | null {
  if (pool === null || plan === null || reading === null || taps.length === 0) return null;
  const rows = touchRows(taps, reading);
  const doubtful = rows.filter((row) => row.doubtful);
  const missing = missingText(reading);
  const swimmers = swimmerResults(fields, pool, plan, reading);
  return {
    headline: {
      label: 'Touches that are sure',
      figure: `${rows.length - doubtful.length} of ${rows.length}`,
      note: missing.length === 0 ? 'no mark is missing' : `${missing.length} missing`,
    },
    sentence: sentenceOf(rows.length, doubtful.length, missing.length),
    cautions: [
      'A thumb is no touch pad: how far splits timed by hand are off, nobody has published.',
      'Each start is taken from the send-off and the stagger: whoever leaves late reads as slower.',
    ],
    children: (
      <>
        {doubtful.length > 0 && (
          <section class="look-at" aria-label="Doubtful touches">
            <p class="list-title">
              Look at {doubtful.length === 1 ? 'this touch' : 'these touches'}
            </p>
            <TouchList label="Doubtful touches" rows={doubtful} onWord={onWord} />
          </section>
        )}
        {missing.length > 0 && (
          <section class="look-at" aria-label="Marks without a touch">
            <p class="list-title">Without a touch</p>
            <ul>
              {missing.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </section>
        )}
        <NumberTable {...repTable(reading, plan)} />
        <div class="worded">
          <NumberTable
            caption="What the second halves say"
            columns={[
              'Swimmer',
              'Reps timed',
              'Mean rep',
              'Mean second half',
              `Honest pace per 100\u00a0${pool.unit}`,
            ]}
            rows={swimmers.map(({ name, timed, mean, secondHalf, honestPace }) => ({
              head: name,
              cells: [timed, mean, secondHalf, honestPace],
            }))}
          />
        </div>
        <section class="open-sets no-print" aria-label="Reps to open in “Read a rep set”">
          <p class="list-title">Open the reps in “Read a rep set”</p>
          <ul>
            {swimmers.map(
              ({ name, href }) =>
                href && (
                  <li key={name}>
                    <a class="button quiet" href={href}>
                      {name}
                    </a>
                  </li>
                ),
            )}
          </ul>
        </section>
      </>
    ),
    working: <TouchList label="Every touch" rows={rows} onWord={onWord} />,
  };
}

/** Touches and rep times, for the file that a person takes along. */
export function csvOf({ plan, reading, taps }: DeckView): Csv['rows'] | null {
  if (plan === null || reading === null || taps.length === 0) return null;
  return [
    ...linesOf(repTable(reading, plan)),
    [],
    ['Touch', 'Whose'],
    ...touchRows(taps, reading).map(({ time, text }) => [time, text]),
  ];
}
