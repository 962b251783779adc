import { formatTime, pacePer, type RepTargets } from 'backhalf';
import { NumberTable, ResultCard } from '~/ui';
import { EstimateChart } from '~/ui/EstimateChart';
import { repRows } from '~/ui/rep-rows';
import { distanceText, gapText, slowerOrFaster } from '~/ui/wording';
import type { Method } from './methods';
import type { BrokenResult } from './model';

/** The answer: the back half first, then every method beside it. */
export function Result({ result }: { readonly result: BrokenResult }) {
  const { set, reading, race, methods, comparison, targets, sentence, cautions } = result;
  const { unit } = set.pool;
  const distance = `${distanceText(race.distance)} ${unit}`;
  const asSwum = race.distance === set.repDistance * set.reps.length;
  const [fastest, slowest] = [comparison.estimates[0], comparison.estimates.at(-1)];
  const last = comparison.estimates.length - 1;
  const widest = comparison.pairs.find(({ faster, slower }) => faster === 0 && slower === last);
  return (
    <ResultCard
      headline={{
        label: `Twice the second halves, for ${distance}`,
        figure: formatTime(race.backHalf.time),
        note: `${formatTime(pacePer(race.backHalf.time, race.distance))} per 100 ${unit}`,
      }}
      beside={[
        {
          label: `Swum: ${set.reps.length} × ${distanceText(set.repDistance)}`,
          figure: formatTime(race.swum),
          note: 'rests left out; no estimate',
        },
        {
          label: 'What the pieces flatter by',
          figure: formatTime(race.optimism, { signed: true }),
          note: 'second halves, doubled, less swum',
        },
        ...(widest && fastest && slowest
          ? [
              {
                label: `All ${comparison.estimates.length} methods that answer`,
                figure: `${formatTime(fastest.time)} – ${formatTime(slowest.time)}`,
                note: `${gapText(widest.difference)} apart`,
              },
            ]
          : []),
      ]}
      cautions={cautions}
      sentence={sentence}
      working={
        <NumberTable
          caption={`Pieces of ${distanceText(set.repDistance)} ${unit}`}
          {...repRows(reading, 'Piece')}
        />
      }
    >
      <EstimateChart
        rows={methods.flatMap(({ name, estimate }) => (estimate ? [{ name, estimate }] : []))}
        mark={asSwum ? { name: 'Swum', time: race.swum } : null}
        finding={cautions[0] ?? sentence}
      />
      <div class="words-first">
        <NumberTable
          caption={`Method by method, for ${distance}`}
          {...methodRows(methods, race.distance, unit)}
        />
        {distinct(methods.flatMap(({ estimate }) => estimate?.range?.covers ?? [])).map(
          (covers) => (
            <p class="said" key={covers}>
              The range: {covers}
            </p>
          ),
        )}
      </div>
      <Targets targets={targets} piece={`${distanceText(set.repDistance)} ${unit}`} />
    </ResultCard>
  );
}

/** The methods as a table: figures as text, units in the headings. */
export function methodRows(methods: readonly Method[], distance: number, unit: string) {
  return {
    columns: ['Method', 'Time', `Per 100 ${unit}`, 'Fast end', 'Slow end'],
    rows: methods.map(({ name, estimate }) => ({
      head: name,
      cells: estimate
        ? [
            formatTime(estimate.time),
            formatTime(pacePer(estimate.time, distance)),
            estimate.range ? formatTime(estimate.range.low) : '–',
            estimate.range ? formatTime(estimate.range.high) : '–',
          ]
        : ['–', '–', '–', '–'],
    })),
  };
}

function Targets({ targets, piece }: { readonly targets: RepTargets; readonly piece: string }) {
  const row = (head: string, { halfway, wall }: RepTargets['honest']) => ({
    head,
    cells: [formatTime(halfway), formatTime(wall)],
  });
  const { goOut } = targets;
  const out = goOut === 0 ? 'as today' : `${slowerOrFaster(goOut)} than today`;
  return (
    <div class="words-first">
      <NumberTable
        caption={`The next one: what the watch must show, ${piece} a piece`}
        columns={['Aim', 'At halfway', 'At the wall']}
        rows={[row('Hold the second half', targets.honest), row('One step better', targets.better)]}
      />
      <p class="said">To hold the second half, go out {out}.</p>
    </div>
  );
}

const distinct = (lines: readonly string[]): readonly string[] => [...new Set(lines)];
