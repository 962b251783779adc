import { EXPONENTS_SEEN } from './track-record.js';

/** An exponent of the power law that somebody published, or that published results give. */
export interface ReferenceExponent {
  /** The exponent, a ratio. */
  readonly exponent: number;
  /** What it describes. */
  readonly what: string;
  /** Where it comes from. */
  readonly source: string;
  /** `quoted`: as another text quotes it; `read`: worked out from figures read in the source; `open data`. */
  readonly standing: 'read' | 'quoted' | 'open data';
}

/**
 * Exponents to choose from for {@link powerLawThrough}, each with its source. None is right for every swimmer:
 * see how they differ.
 *
 * @example
 * const [running] = REFERENCE_EXPONENTS;
 * [running?.exponent, running?.what]; // => [1.06, 'running, efforts of 3.5 to 230 minutes']
 */
export const REFERENCE_EXPONENTS: readonly ReferenceExponent[] = /* @__PURE__ */ (() => [
  {
    exponent: 1.06,
    what: 'running, efforts of 3.5 to 230 minutes',
    source: 'Riegel 1981, Am. Sci.',
    standing: 'quoted',
  },
  {
    exponent: 1.125,
    what: 'records of racing men and animals, swimming among them',
    source: 'Kennelly 1906, Proc. Am. Acad. Arts Sci. 42(15), in Popular Science Monthly 73, 1908',
    standing: 'quoted',
  },
  {
    exponent: 1.107,
    what: 'world records of 1976, men, 100 to 400 m freestyle',
    source: 'worked out from Jokl and Jokl 1976, Br. J. Sports Med.',
    standing: 'read',
  },
  ...EXPONENTS_SEEN.map(
    ({ mean, who, swims, between: [from, to] }): ReferenceExponent => ({
      exponent: mean,
      what: `${swims} ${who}, best ${from} and ${to} m freestyle at one Olympic Games`,
      source: 'official results of the Olympic Games of 2000, 2004, 2008 and 2016',
      standing: 'open data',
    }),
  ),
])();
