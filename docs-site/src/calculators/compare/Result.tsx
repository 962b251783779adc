import { formatTime, type Hundredths } from 'backhalf';
import { type Figured, NumberTable, ResultCard } from '~/ui';
import { EstimateChart } from '~/ui/EstimateChart';
import { gapText, slowerOrFaster } from '~/ui/wording';
import { placeText } from './goal';
import type { CompareResult } from './model';

/** The answer: how far apart the estimates lie, then each of them on one axis. */
export function Result({ result }: { readonly result: CompareResult }) {
  const { race, goal, answered, comparison, sentence, cautions } = result;
  const covers = new Set(answered.flatMap(({ estimate }) => estimate.range?.covers ?? []));
  const within = comparison.goal?.filter(({ place }) => place === 'within').length ?? 0;
  return (
    <ResultCard
      headline={headlineOf(result)}
      beside={[
        ...endsOf(result),
        ...(goal === null
          ? []
          : [
              {
                label: 'Goal',
                figure: formatTime(goal),
                note: `within ${within} of ${answered.length} ranges`,
              },
            ]),
      ]}
      cautions={cautions}
      sentence={sentence}
      working={[...covers].map((text) => (
        <p key={text}>
          {answered
            .filter(({ estimate }) => estimate.range?.covers === text)
            .map(({ name }) => name)
            .join(', ')}
          . The range: {text.replace(/\.$/, '')}.
        </p>
      ))}
    >
      <EstimateChart
        rows={answered}
        mark={goal === null ? null : { name: 'goal', time: goal }}
        finding={sentence}
      />
      <div class="tables-beside words-first">
        <NumberTable caption={`Estimates for ${race}, fastest first`} {...estimateRows(result)} />
        {goal !== null && (
          <NumberTable
            caption={`The goal of ${formatTime(goal)} against each`}
            {...goalRows(result)}
          />
        )}
      </div>
    </ResultCard>
  );
}

/** With several, what matters is how far apart they are; one alone is what there is. */
function headlineOf({ answered, race }: CompareResult): Figured | null {
  const [fastest, slowest] = [answered[0], answered.at(-1)];
  if (fastest === undefined || slowest === undefined) return null;
  const [from, to] = [fastest.estimate.time, slowest.estimate.time];
  if (answered.length === 1) {
    return { label: `${fastest.name}, for ${race}`, figure: formatTime(from), note: 'alone' };
  }
  return {
    label: `How far apart ${answered.length} estimates for ${race} lie`,
    figure: gapText((to - from) as Hundredths),
    note: `${formatTime(from)} – ${formatTime(to)}`,
  };
}

function endsOf({ answered }: CompareResult): readonly Figured[] {
  const [fastest, slowest] = [answered[0], answered.at(-1)];
  if (answered.length < 2 || fastest === undefined || slowest === undefined) return [];
  return [
    { label: 'Fastest', figure: formatTime(fastest.estimate.time), note: fastest.name },
    { label: 'Slowest', figure: formatTime(slowest.estimate.time), note: slowest.name },
  ];
}

/** The estimates as a table: figures as text. */
export function estimateRows({ answered }: CompareResult) {
  return {
    columns: ['Method', 'Time', 'Fast end', 'Slow end'],
    rows: answered.map(({ name, estimate: { time, range } }) => ({
      head: name,
      cells: [
        formatTime(time),
        range ? formatTime(range.low) : '–',
        range ? formatTime(range.high) : '–',
      ],
    })),
  };
}

/** Where the goal lies against each. */
export function goalRows({ answered, comparison }: CompareResult) {
  return {
    columns: ['Method', 'Goal is', 'Against its range'],
    rows: (comparison.goal ?? []).map((place, i) => ({
      head: answered[i]?.name ?? '',
      cells: [slowerOrFaster(place.difference), placeText(place)],
    })),
  };
}
