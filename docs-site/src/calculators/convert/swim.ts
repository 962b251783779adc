import { formatTime, hundredths, isPacingError, type Pool, type SwimToConvert } from 'backhalf';
import { readCountText } from '~/ui/count-text';
import { plausibleTimes } from '~/ui/plausible';
import type { Figured } from '~/ui/ResultCard';
import { readTimeText } from '~/ui/time-text';
import { distanceText, slowerOrFaster } from '~/ui/wording';
import { type Answer, any, type Outcome, problemsOf, refused } from './answer';
import { hasPoints, readBases } from './bases';
import { type ConvertFields, poolText } from './fields';
import { gainsFor, gainText, readGain, strokeOf } from './gains';
import { byTable, byTurns, type Method, workingOf } from './methods';

/** Converts the time of a swim, by every method that answers. */
export function convertSwim(fields: ConvertFields, from: Pool, to: Pool): Outcome {
  const stroke = strokeOf(fields);
  const distance = readCountText(fields.distance, 'Distance', { least: 10, most: 25_000 });
  const window = plausibleTimes(distance.count ?? 100);
  const time = readTimeText(fields.time, 'Time of the swim', window);
  const gain = readGain(fields, stroke);
  const bases = readBases(fields, window, hasPoints(from, to));
  const problems = problemsOf({
    distance: distance.error,
    time: time.error,
    [gain.field]: gain.error,
    ...bases.errors,
  });
  if (any(problems) || distance.count === null || time.time === null) return { problems };

  const sex = fields.sex === 'M' ? 'M' : 'W';
  const swim = { time: time.time, distance: distance.count, stroke, sex, from } as const;
  try {
    const table = byTable(swim, to);
    const turns = gainsFor(gain.gain, stroke).map((each) => byTurns(swim, to, each));
    const chosen = turns.find((each) => each.gain?.key === gain.gain?.key) ?? null;
    const main = table ?? chosen;
    if (main === null) {
      const message =
        'No table is published for this swim between these pools; choose a gain per turn.';
      return refused('gain', message);
    }
    const other = table && chosen;
    const worth = bases.worth?.(swim.time) ?? null;
    return {
      answer: answerOf(swim, to, { main, other, worth, all: table ? [table, ...turns] : turns }),
    };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return refused(error.code === 'not-whole-lengths' ? 'distance' : 'time', error.message);
  }
}

interface Found {
  readonly main: Method;
  /** The other of the two methods, where both apply. */
  readonly other: Method | null;
  readonly worth: Figured | null;
  readonly all: readonly Method[];
}

function answerOf(swim: SwimToConvert, to: Pool, { main, other, worth, all }: Found): Answer {
  const { time, distance, range } = main.conversion;
  const there = `${distanceText(distance)} ${to.unit} in ${poolText(to)}`;
  const here = `${formatTime(swim.time)} for ${distanceText(swim.distance)} ${swim.from.unit} in ${poolText(swim.from)}`;
  const shown = other === null ? [main] : [main, other];
  const figures = shown.map(({ conversion, words }) => `${formatTime(conversion.time)} ${words}`);
  return {
    headline: { label: there, figure: formatTime(time), note: main.words },
    beside: [
      other && {
        label: 'The other method',
        figure: formatTime(other.conversion.time),
        note: `${other.words}, ${slowerOrFaster(hundredths(other.conversion.time - time))}`,
      },
      worth,
      range && {
        label: 'Measured between these pools',
        figure: `${formatTime(range.low)} – ${formatTime(range.high)}`,
        note: range.covers,
      },
    ].filter((item) => item !== null),
    sentence: `${here} is, for ${there}, ${figures.join(' and ')}.`,
    cautions: [
      ...new Set(shown.flatMap(({ conversion }) => conversion.cautions.map((c) => c.message))),
    ],
    table: {
      caption: `${here}, by every method there is`,
      columns: ['Method', 'Time', 'Factor', 'Turns fewer', 'Gain a turn (s)'],
      rows: all.map(({ name, conversion: { factor, turnsFewer, ...each }, gain }) => ({
        head: name,
        cells: [
          formatTime(each.time),
          factor.toFixed(4),
          turnsFewer === undefined ? '–' : String(turnsFewer).replace('-', '−'),
          gain === null ? '–' : gainText(gain.gainPerTurn).replace(' s', ''),
        ],
      })),
    },
    sources: all.map(({ name, source }) => ({ method: name, source })),
    working: shown.map(workingOf),
  };
}
