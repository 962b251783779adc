import { formatTime, type Hundredths, isPacingError, type Pool } from 'backhalf';
import { type Outcome, refused } from './answer';
import { type ConvertFields, poolText } from './fields';
import { type Gain, gainsFor, gainText, readGain, strokeOf } from './gains';

interface Asked {
  /** What is converted, in the new pool: `pace per 100`. */
  readonly name: string;
  /** The figure that was given. */
  readonly given: Hundredths;
  readonly from: Pool;
  readonly to: Pool;
  /** The figure by one gain; and, where it is rounded for the clock, what it was before. */
  readonly convert: (gain: Gain) => { readonly time: Hundredths; readonly exact?: Hundredths };
  /** The field that is wrong where the stretch ends between the walls. */
  readonly field: string;
}

/** Converts what only turns convert: by the chosen gain, and by every published one beside it. */
export function byGains(fields: ConvertFields, asked: Asked): Outcome {
  const stroke = strokeOf(fields);
  const { gain, error, field } = readGain(fields, stroke);
  if (gain === null) {
    return refused(field, error ?? 'Choose a gain per turn, or type one.');
  }
  try {
    return { answer: answerOf(asked, gain, gainsFor(gain, stroke)) };
  } catch (thrown) {
    if (!isPacingError(thrown)) throw thrown;
    const between = thrown.code === 'not-whole-lengths';
    return refused(between ? asked.field : field, thrown.message);
  }
}

function answerOf({ name, given, from, to, convert }: Asked, gain: Gain, all: readonly Gain[]) {
  const { time, exact } = convert(gain);
  const words = `by turns at ${gainText(gain.gainPerTurn)}`;
  const there = `${name} ${to.unit} in ${poolText(to)}`;
  const here = `A ${name} ${from.unit} in ${poolText(from)} of ${formatTime(given)}`;
  return {
    headline: { label: there, figure: formatTime(time), note: words },
    beside: exact === undefined ? [] : [{ label: 'Before rounding', figure: formatTime(exact) }],
    sentence: `${here} is ${formatTime(time)} in ${poolText(to)}, ${words}.`,
    cautions: [
      'What turns gain differs between swimmers as much as between pools; try more than one gain.',
    ],
    table: {
      caption: `${there}, by every gain there is`,
      columns: [
        'Gain',
        'Time',
        ...(exact === undefined ? [] : ['Before rounding']),
        'Gain a turn (s)',
      ],
      rows: all.map((each) => {
        const converted = convert(each);
        return {
          head: each.name,
          cells: [
            formatTime(converted.time),
            ...(converted.exact === undefined ? [] : [formatTime(converted.exact)]),
            gainText(each.gainPerTurn).replace(' s', ''),
          ],
        };
      }),
    },
    sources: all.map((each) => ({ method: each.name, source: each.source })),
    working: [
      'A turn fewer costs its gain; the rest of the time goes with the distance, and is rounded once.',
    ],
  };
}
