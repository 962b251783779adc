import type { Hundredths } from '../time/hundredths.js';
import type { Stroke } from './event.js';

/** A published value of what one turn gains, to choose from; see {@link TURN_GAINS}. */
export interface TurnGain {
  /** A stable name. */
  readonly key: string;
  /** The gain per turn by stroke, in hundredths of a second; a stroke without one is left out. */
  readonly gains: Readonly<Partial<Record<Stroke, Hundredths>>>;
  /** The yard ratio that belongs to it; where left out, the exact one does. */
  readonly yardRatio?: number;
  /** Where it was published. */
  readonly source: string;
  /** Read in the source, quoted by another text, or worked out from published times. */
  readonly standing: 'read' | 'quoted' | 'worked';
}

/**
 * Published gains per turn. They are conventions of committees and single comparisons, and they
 * disagree: for the men's and the women's record of the 1500 by a factor of 25. So none is a default.
 *
 * @example
 * TURN_GAINS.map(({ key, gains }) => [key, gains.free]);
 * // => [['club-handbook', 80], ['committee-handbook', 100], ['record-1500-men', 77], ['record-1500-women', 3]]
 */
export const TURN_GAINS: readonly TurnGain[] = [
  {
    key: 'club-handbook',
    gains: { free: 80, back: 60, breast: 100, fly: 70, medley: 80 } as TurnGain['gains'],
    yardRatio: 1.11,
    source: 'A US club’s handbook: 50 m from 25 yd × 1.11, plus an amount for each 50 m.',
    standing: 'read',
  },
  {
    key: 'committee-handbook',
    gains: { free: 100, back: 100, breast: 100, fly: 100, medley: 100 } as TurnGain['gains'],
    yardRatio: 1.1,
    source:
      'Local swimming committee, San Diego–Imperial: 50 m from 25 yd × 1.1, plus one second for each turn fewer.',
    standing: 'quoted',
  },
  {
    key: 'record-1500-men',
    gains: { free: 77 } as TurnGain['gains'],
    source:
      'Men’s world records of the 1500, 14:31.02 (50 m, 2012) and 14:08.06 (25 m, 2014), over 30 turns.',
    standing: 'worked',
  },
  {
    key: 'record-1500-women',
    gains: { free: 3 } as TurnGain['gains'],
    source:
      'Women’s world records of the 1500, 15:20.48 (50 m) and 15:19.71 (25 m), over 30 turns.',
    standing: 'worked',
  },
];
