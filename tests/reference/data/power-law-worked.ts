import {
  fitPowerLaw,
  formatTime,
  hundredths,
  powerLawThrough,
  type Trial,
  timeFromPowerLaw,
} from 'backhalf';
import type { Reference } from '../reference.js';

/** The swims, in metres and hundredths of a second, and the exponent where there is only one. */
interface Input {
  readonly swims: readonly (readonly [distance: number, time: number])[];
  readonly exponent?: number;
}

interface Published {
  readonly exponent: number;
  readonly factor: number | null;
  readonly standardError: number | null;
  readonly from: number | null;
  readonly to: number | null;
  /** The 1500, in hundredths of a second. */
  readonly race: number;
}

const WOMEN = [
  [200, 11_298],
  [400, 23_646],
  [800, 48_479],
  [1500, 92_048],
] as const;
const MEN = [
  [200, 10_296],
  [400, 22_008],
  [800, 45_865],
  [1500, 87_456],
] as const;
const [W200, W400, W800, W1500] = WOMEN;

const digits = (value: number | null, count: number) =>
  value === null ? null : Number(value.toPrecision(count));
const decimals = (value: number | null) => (value === null ? null : Number(value.toFixed(8)));
const printed = (values: Published): Published => ({
  exponent: digits(values.exponent, 10)!,
  factor: digits(values.factor, 10),
  standardError: digits(values.standardError, 9),
  from: decimals(values.from),
  to: decimals(values.to),
  race: values.race,
});
const twoSwims = (exponent: number, factor: number, race: number): Published =>
  printed({ exponent, factor, standardError: null, from: null, to: null, race });
const given = (exponent: number, race: number) => ({
  place: `one swim, exponent ${exponent} given`,
  input: { swims: [[400, 24_000]] as const, exponent },
  published: printed({ exponent, factor: null, standardError: null, from: null, to: null, race }),
});

/** A statistics package gave these; they check the arithmetic, not the model. */
export const powerLawWorked: Reference<Input, Published> = {
  key: 'power-law-worked',
  title: 'Power law: straight line of ln time on ln distance, and the 1500 it gives',
  source: 'worked with a statistics package from the times shown',
  standing: 'worked',
  rows: [
    {
      place: 'four swims of one set of records',
      input: { swims: WOMEN },
      published: printed({
        exponent: 1.0407363236634,
        factor: 0.458848872796,
        standardError: 0.0071853059765,
        from: 1.00982045,
        to: 1.0716522,
        race: 92_714,
      }),
    },
    {
      place: 'without the 200',
      input: { swims: [W400, W800, W1500] },
      published: printed({
        exponent: 1.0283936096073,
        factor: 0.499494711339,
        standardError: 0.0045367840419,
        from: 0.9707483,
        to: 1.08603892,
        race: 92_215,
      }),
    },
    {
      place: '400 and 1500',
      input: { swims: [W400, W1500] },
      published: twoSwims(1.0282657141112, 0.499055228664, 92_048),
    },
    {
      place: '400 and 800',
      input: { swims: [W400, W800] },
      published: twoSwims(1.0357637846333, 0.477131600375, 92_965),
    },
    {
      place: '200 and 400',
      input: { swims: [W200, W400] },
      published: twoSwims(1.0655287495236, 0.399197632066, 96_695),
    },
    {
      place: 'four swims of another set of records',
      input: { swims: MEN },
      published: printed({
        exponent: 1.0618477151818,
        factor: 0.375193344342,
        standardError: 0.010733468822,
        from: 1.01566533,
        to: 1.1080301,
        race: 88_467,
      }),
    },
    given(1.03, 93_640),
    given(1.04, 94_886),
    given(1.06, 97_428),
  ],
  compute: ({ swims, exponent }) => {
    const races = swims.map(trial);
    const law = exponent === undefined ? fitPowerLaw(races) : powerLawThrough(races[0]!, exponent);
    return printed({
      exponent: law.exponent,
      factor: exponent === undefined ? law.factor : null,
      standardError: law.standardError,
      from: law.interval?.low ?? null,
      to: law.interval?.high ?? null,
      race: timeFromPowerLaw(law, 1500).time,
    });
  },
  show: (value) =>
    'swims' in value
      ? value.swims
          .map(([distance, time]) => `${distance} m ${formatTime(hundredths(time))}`)
          .join(', ')
      : JSON.stringify(value),
};

function trial([distance, time]: readonly [number, number]): Trial {
  return { distance, time: hundredths(time) };
}
