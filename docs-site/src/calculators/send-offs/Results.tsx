import { NumberTable, ResultCard } from '~/ui';
import { clockText, gapText } from '~/ui/wording';
import { ClockFace } from './ClockFace';
import type { LaneResult } from './lane';
import type { SquadResult } from './squad';

/** The send-off of one lane. */
export function LaneAnswer({ result }: { readonly result: LaneResult }) {
  const { set, sendOff, rest, shorter, duration, cautions, sentence } = result;
  return (
    <ResultCard
      headline={{
        label: `Send-off for ${set}`,
        figure: clockText(sendOff),
        note: `${clockText(rest)} of rest`,
      }}
      beside={[
        ...(shorter
          ? [
              {
                label: 'Five seconds shorter',
                figure: clockText(shorter.sendOff),
                note: `${clockText(shorter.rest)} of rest`,
              },
            ]
          : []),
        { label: 'Last swimmer in', figure: clockText(duration.finished ?? duration.booked) },
        { label: 'Booked for the set', figure: clockText(duration.booked) },
      ]}
      cautions={cautions}
      sentence={sentence}
    >
      <ClockFace marks={result.marks} finding={`${sentence} ${handTable(result).caption}.`} />
      <NumberTable {...handTable(result)} />
    </ResultCard>
  );
}

const endings = ['st', 'nd', 'rd']; // a lane holds twelve, so no 21st

/** What the hand shows, rep by rep, as each swimmer leaves and comes in. */
export function handTable({ hand, repeats }: LaneResult) {
  const columns = hand[0]?.swimmers.map((_, i) => `${i + 1}${endings[i] ?? 'th'}`) ?? [];
  return {
    caption: `The hand as each swimmer leaves → comes in${repeats ? '; then the same again' : ''}`,
    columns: ['Rep', ...columns],
    rows: hand.map(({ rep, swimmers }) => ({
      head: String(rep),
      cells: swimmers.map((swimmer) => `${second(swimmer.leaves)} → ${second(swimmer.in)}`),
    })),
  };
}

/** A hand is read to the whole second it has passed; the top is called sixty. */
const second = (time: number) => String(Math.floor(time / 100) || 60).padStart(2, '0');

/** A squad in lanes. */
export function SquadAnswer({ result }: { readonly result: SquadResult }) {
  const { set, lanes, finished, spread, cautions, sentence } = result;
  return (
    <ResultCard
      headline={{
        label: `Lanes for ${set}`,
        figure: String(lanes.length),
        note: `at most ${gapText(spread)} s per 100 apart in one lane`,
      }}
      beside={[{ label: 'Last lane done', figure: clockText(finished) }]}
      cautions={cautions}
      sentence={sentence}
    >
      {squadTables(result).map((table) => (
        <div class="worded" key={table.caption}>
          <NumberTable {...table} />
        </div>
      ))}
    </ResultCard>
  );
}

/** One table a lane. */
export const squadTables = ({ lanes }: SquadResult) =>
  lanes.map(({ swimmers, sendOff, finished }, i) => ({
    caption: `Lane ${i + 1}, on ${sendOff === null ? 'no send-off' : clockText(sendOff)}${finished === null ? '' : `, done at ${clockText(finished)}`}`,
    columns: ['Swimmer', 'Pace per 100', 'Rest'],
    rows: swimmers.map(({ name, pace, rest }) => ({
      head: name,
      cells: [clockText(pace), rest === null ? 'none' : clockText(rest)],
    })),
  }));
