import { formatTime, type Pool, type Splits } from 'backhalf';
import { ResultCard } from '~/ui';
import { SplitChart } from '~/ui/SplitChart';
import { SplitTable } from '~/ui/SplitTable';
import { distanceText, signedPercent } from '~/ui/wording';
import { type HalvesResult, verdictWords } from './model';
import { Slips } from './Slips';

interface Props {
  readonly result: HalvesResult;
  readonly pool: Pool;
  readonly onMend: (swim: Splits) => void;
}

/** The answer: what the second half took more than the first, and the laps behind it. */
export function Result({ result, pool, onMend }: Props) {
  const { swim, halves, comparison, profile, slips, sentence, cautions } = result;
  const finish = swim.marks.at(-1);
  const total = finish ? formatTime(finish.time) : '';
  return (
    <ResultCard
      headline={{
        label: 'Second half against the first',
        figure: formatTime(comparison.difference, { signed: true }),
        note: `${verdictWords[comparison.verdict]}, ${signedPercent(comparison.ratio - 1)} %`,
      }}
      beside={[
        { label: 'First half', figure: formatTime(halves.first) },
        { label: 'Second half', figure: formatTime(halves.second) },
        { label: 'Whole swim', figure: total },
      ]}
      cautions={cautions}
      sentence={sentence}
      working={
        <>
          <p>
            Halfway is {distanceText((finish?.distance ?? 0) / 2)} {pool.unit}. The time there is
            the first half; what remains of {total} is the second.
          </p>
          {profile && (
            <p>
              Leaving out the first and the last lap, the laps between change by{' '}
              {signedSeconds(profile.middle.drift)} s from one to the next (a straight line through
              them) and scatter by {signedPercent(profile.middle.variation).replace('+', '')} %. The
              first lap is {signedPercent(profile.first)} % against them, the last{' '}
              {signedPercent(profile.last)} %.
            </p>
          )}
        </>
      }
    >
      <Slips slips={slips} onMend={onMend} />
      {profile && (
        <SplitChart swims={[swim]} names={['Swim']} unit={pool.unit} finding={sentence} />
      )}
      <SplitTable caption="Laps of the swim" swims={[swim]} names={['Swim']} unit={pool.unit} />
    </ResultCard>
  );
}

/** Hundredths per lap, a fitted slope and no time, as seconds. */
const signedSeconds = (slope: number): string =>
  `${slope < 0 ? '−' : '+'}${(Math.abs(slope) / 100).toFixed(2)}`;
