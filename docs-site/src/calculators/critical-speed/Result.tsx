import { convertDistance, formatTime, type Interval } from 'backhalf';
import { type Figured, MethodNotes, NumberTable, ResultCard } from '~/ui';
import { distanceText, signedNumber } from '~/ui/wording';
import { FitChart } from './FitChart';
import type { CriticalResult } from './model';
import { notesOf } from './notes';
import type { Answer } from './races';
import { raceRows, stepRows, trialRows, verdictRows } from './rows';

/** The answer: critical pace first, the races by both methods, then the reserve through the set. */
export function Result({ result }: { readonly result: CriticalResult }) {
  const { model, unit, pace, races, race, forms, sentence, cautions } = result;
  const asked = races.find(({ distance }) => distance === race);
  const reserve = (metres: number) => signedNumber(convertDistance(metres, 'm', unit), false);
  return (
    <ResultCard
      headline={{
        label: `Critical pace, per 100 ${unit}`,
        figure: formatTime(pace),
        note: `${model.speed.toFixed(3)} m/s${between(model.intervals?.speed, (v) => v.toFixed(2))}`,
      }}
      beside={[
        {
          label: `Reserve, ${unit}`,
          figure: reserve(model.reserve),
          note: `above that speed${between(model.intervals?.reserve, reserve)}`,
        },
        ...(asked
          ? [
              promised(`${distanceText(race)} ${unit}, if pace settles`, asked.settles),
              promised(`${distanceText(race)} ${unit}, if it keeps fading`, asked.fades),
            ]
          : []),
      ]}
      cautions={cautions}
      sentence={sentence}
      working={<Working result={result} />}
    >
      <FitChart result={result} />
      <NumberTable caption="Trials against the line" {...trialRows(result)} />
      <div class="tables-beside">
        <NumberTable
          caption="Races if pace settles: critical speed"
          {...raceRows(result, 'settles')}
        />
        <NumberTable
          caption="Races if pace keeps fading: power law"
          {...raceRows(result, 'fades')}
        />
      </div>
      {forms && (
        <div class="words-first">
          <NumberTable caption="The reserve through the set" {...verdictRows(result)} />
          <p class="said">
            The three forms are published and disagree; read no more than the verdict out of them,
            and trust the swimmer first.
          </p>
        </div>
      )}
    </ResultCard>
  );
}

/** The notes, for the whole width below the answer. */
export const Notes = ({ result }: { readonly result: CriticalResult }) => (
  <MethodNotes notes={notesOf(result)} />
);

const between = (interval: Interval | undefined, write: (value: number) => string): string =>
  interval === undefined ? '' : `; 95 % from ${write(interval.low)} to ${write(interval.high)}`;

function promised(label: string, answer: Answer): Figured {
  if (typeof answer === 'string') return { label, figure: '–', note: answer };
  const { time, range } = answer;
  const note = range ? `${formatTime(range.low)} – ${formatTime(range.high)}` : 'no range measured';
  return { label, figure: formatTime(time), note };
}

function Working({ result }: { readonly result: CriticalResult }) {
  const { model, unit, forms } = result;
  const { standardErrors, rSquared, reserve, speed } = model;
  return (
    <>
      <p>
        Least squares of distance on time: distance = {reserve.toFixed(2)} m + {speed.toFixed(4)}{' '}
        m/s × time.
        {standardErrors &&
          ` Standard errors ${standardErrors.speed.toFixed(4)} m/s and ${standardErrors.reserve.toFixed(2)} m.`}
        {rSquared !== null &&
          ` R² is ${rSquared.toFixed(5)}, which says little: the longer distance always takes longer.`}
      </p>
      <p>
        The intervals of the races are for one more swim on the line. With few trials they are wide,
        because few trials know little.
      </p>
      {forms && (
        <div class="no-print">
          <NumberTable
            caption={`The reserve after each swim, by each form, ${unit}`}
            {...stepRows(result)}
          />
        </div>
      )}
    </>
  );
}
