import {
  formatTime,
  type Hundredths,
  hundredths,
  type Stroke,
  TURN_GAINS,
  type TurnOptions,
} from 'backhalf';
import { readTimeText } from '~/ui/time-text';
import type { ConvertFields } from './fields';

/** What one turn gains, for one stroke, and who says so. */
export interface Gain extends TurnOptions {
  /** The key of the published value, or `own`. */
  readonly key: string;
  readonly name: string;
  readonly source: string;
}

/** A gain per turn is a second or so; beyond ten nobody means it. */
export const gainWindow = { from: hundredths(0), to: hundredths(1000) };

const standings = {
  read: 'Read in the source.',
  quoted: 'As quoted by another text.',
  worked: 'Worked out from these times.',
};

/** The field’s stroke; an address that says another was mended before. */
export const strokeOf = ({ stroke }: ConvertFields): Stroke => stroke as Stroke;

/** The published gains for a stroke. */
export const publishedGains = (stroke: Stroke): readonly Gain[] =>
  TURN_GAINS.flatMap(({ key, gains, yardRatio, source, standing }) => {
    const gainPerTurn = gains[stroke];
    if (gainPerTurn === undefined) return [];
    return {
      key,
      name: key.charAt(0).toUpperCase() + key.slice(1).replaceAll('-', ' '),
      gainPerTurn,
      ...(yardRatio !== undefined && { yardRatio }),
      source: `${source} ${standings[standing]}`,
    };
  });

export interface GainText {
  /** None where none was chosen, or what was typed does not read. */
  readonly gain: Gain | null;
  readonly error: string | null;
  /** The field that the error is about. */
  readonly field: 'gain' | 'own';
}

/** The gain that was chosen for a stroke, or typed. */
export function readGain({ gain: key, own }: ConvertFields, stroke: Stroke): GainText {
  if (key === 'none') return { gain: null, error: null, field: 'gain' };
  if (key !== 'own') {
    const gain = publishedGains(stroke).find((each) => each.key === key) ?? null;
    const error = 'This gain was published for another stroke; choose another, or type one.';
    return { gain, error: gain === null ? error : null, field: 'gain' };
  }
  const { time, error } = readTimeText(own, 'Gain per turn', gainWindow);
  const source = 'The gain per turn that was typed, with the exact yard.';
  const gain = time === null ? null : { key, name: 'As typed', gainPerTurn: time, source };
  return { gain, error, field: 'own' };
}

/** A gain as it is said: `0.80 s`. */
export const gainText = (gain: Hundredths): string =>
  `${formatTime(gain, { signed: true }).replace('+', '')} s`;

/** All gains to convert by: the typed one first, then those published. */
export const gainsFor = (chosen: Gain | null, stroke: Stroke): readonly Gain[] => [
  ...(chosen?.key === 'own' ? [chosen] : []),
  ...publishedGains(stroke),
];
