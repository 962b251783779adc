import { formatTime, type Hundredths } from 'backhalf';
import { NumberTable, ResultCard } from '~/ui';
import { repRows } from '~/ui/rep-rows';
import type { SetResult } from './model';
import { RepChart } from './RepChart';

/** The answer: the pace that the second halves show, beside what the whole reps promise. */
export function Result({ result }: { readonly result: SetResult }) {
  const { set, reading, race, raceDistance, sentence, cautions } = result;
  const unit = set.pool.unit;
  const table = repRows(reading);
  if (race === null || reading.honestPace === null) {
    return (
      <ResultCard
        headline={{
          label: `Whole reps, per 100 ${unit}`,
          figure: formatTime(reading.repPace),
          note: 'Flatters: no rep has a time at halfway.',
        }}
        cautions={cautions}
        sentence={sentence}
      >
        <NumberTable caption="Reps" {...table} />
      </ResultCard>
    );
  }
  return (
    <ResultCard
      headline={{
        label: `Honest pace, per 100 ${unit}`,
        figure: formatTime(reading.honestPace),
        note: `${formatTime(race.time)} for ${raceDistance} ${unit}`,
      }}
      beside={[
        {
          label: 'Whole reps promise',
          figure: formatTime(race.wholeReps),
          note: `${formatTime(reading.repPace)} per 100`,
        },
        {
          label: 'Optimism of the set',
          figure: formatTime(race.optimism, { signed: true }),
          note: `${formatTime(reading.optimism as Hundredths, { signed: true })} per 100`,
        },
        {
          label: 'Range of one race',
          figure: race.range
            ? `${formatTime(race.range.low)} – ${formatTime(race.range.high)}`
            : 'not measured',
          note: race.range?.covers,
        },
      ]}
      cautions={cautions}
      sentence={sentence}
      working={<Working result={result} />}
    >
      <RepChart reading={reading} />
      <NumberTable caption={`Reps of ${set.repDistance} ${unit}`} {...table} />
    </ResultCard>
  );
}

function Working({ result: { reading, race, set } }: { readonly result: SetResult }) {
  const { halves } = reading;
  return (
    <>
      {halves && (
        <p>
          Mean halves {formatTime(halves.first)} and {formatTime(halves.second)}. Twice the second
          is {formatTime((2 * halves.second) as Hundredths)} for {set.repDistance}; the whole rep
          takes {formatTime(reading.average)}.
        </p>
      )}
      <p>
        Best {formatTime(reading.best)}, slowest {formatTime(reading.slowest)}; from the first third
        to the last, {formatTime(reading.fade, { signed: true })} a rep.
        {reading.rest !== null && ` Mean rest ${formatTime(reading.rest)}.`} Halves within{' '}
        {formatTime(reading.evenWithin)} of each other are called even here: a choice, not a
        published figure.
      </p>
      <ul>
        {race?.assumptions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
