import {
  compareHalves,
  findSlips,
  formatTime,
  type HalfComparison,
  type Halves,
  type Hundredths,
  halvesOf,
  isPacingError,
  lapsOf,
  type PacingProfile,
  type Pool,
  pacingProfile,
  type Slip,
  type Splits,
  splitsFromCumulative,
  splitsFromLaps,
} from 'backhalf';
import { queryOf, type Shape } from '~/ui/address';
import { poolShape, readPool } from '~/ui/pool-text';
import { readTimesText, type TimesText } from '~/ui/times-text';
import { signedPercent, slowerOrFaster } from '~/ui/wording';

export type HalvesFields = Readonly<
  Record<'pool' | 'length' | 'unit' | 'every' | 'kind' | 'start' | 'times', string>
>;

export const shape: Shape<HalvesFields> = {
  ...poolShape,
  every: ['1', '2', '4'],
  kind: ['laps', 'running'],
  start: ['dive', 'push'],
  times: 'any',
};

/** Ten kilometres in a short pool, and more: beyond it, something else was pasted. */
const most = 1000;
const longest = 50_000; // characters read of what was pasted; far more than so many times take

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: HalvesFields): string =>
  `/calculators/halves/?${queryOf(fields)}`;

export interface HalvesView {
  readonly pool: Pool | null;
  /** How far apart two times are, in the pool's unit. */
  readonly every: number;
  readonly reading: TimesText;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: { readonly length: string | null; readonly times: readonly string[] };
  /** None while something is still wrong. */
  readonly result: HalvesResult | null;
}

export interface HalvesResult {
  readonly swim: Splits;
  readonly halves: Halves;
  readonly comparison: HalfComparison;
  /** None under three laps. */
  readonly profile: PacingProfile | null;
  /** Laps that are likely a mistake of the timing or of the typing hand. */
  readonly slips: readonly Slip[];
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: HalvesFields): HalvesView {
  const { pool, error: length } = readPool(fields);
  const every = (pool?.length ?? 25) * Number(fields.every);
  const running = fields.kind === 'running';
  const reading = readTimesText(fields.times.slice(0, longest), {
    label: running ? 'Time' : 'Lap',
    every,
    running,
  });
  const unread = reading.times.flatMap(({ error }) => error ?? []);
  const times = reading.times.flatMap(({ time }) => time ?? []);
  const without = (times: readonly string[]): HalvesView => ({
    pool,
    every,
    reading,
    errors: { length, times },
    result: null,
  });

  if (times.length === 0 && unread.length === 0) {
    return without(['Enter the times of the swim.']);
  }
  if (times.length > most) {
    return without([`These are ${times.length} times; one swim has ${most} at most.`]);
  }
  if (unread.length > 0 || pool === null) return without(unread);
  try {
    const swim = running ? splitsFromCumulative(every, times) : splitsFromLaps(every, times);
    return { ...without([]), result: resultOf(swim, fields, times) };
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return without([error.message]);
  }
}

function resultOf(swim: Splits, fields: HalvesFields, times: readonly Hundredths[]): HalvesResult {
  const halves = halvesOf(swim);
  const comparison = compareHalves(halves);
  const profile = times.length < 3 ? null : pacingProfile(swim);
  const slips = findSlips(swim);
  const doubt = slips.length === 0 ? '' : ` ${lapNumbers(slips)} may be wrong.`;
  const total = formatTime(swim.marks.at(-1)?.time ?? halves.first);
  return {
    swim,
    halves,
    comparison,
    profile,
    slips,
    sentence: `${total}: second half ${slowerOrFaster(comparison.difference)}, ${verdictWords[comparison.verdict]}.${doubt}`,
    cautions: cautionsOf(halves, comparison, fields),
  };
}

const lapNumbers = (slips: readonly Slip[]): string =>
  slips.length === 1 ? `Lap ${slips[0]?.lap}` : `Laps ${slips.map(({ lap }) => lap).join(', ')}`;

/** A swim as the text of the times field. */
export const timesText = (swim: Splits, { kind }: HalvesFields): string =>
  (kind === 'running' ? swim.marks.map(({ time }) => time) : lapsOf(swim))
    .map((time) => formatTime(time))
    .join('\n');

export const verdictWords = {
  negative: 'a negative split',
  even: 'an even split',
  positive: 'a positive split',
} as const;

/**
 * Less than this share of a half is within what one swimmer's splits scatter from race to race; the
 * place of the line is our choice.
 *
 * @see Skorski and others 2014, Int. J. Sports Physiol. Perform. 9(2).
 */
export const scatter = 0.005;

function cautionsOf(
  { interpolated }: Halves,
  { ratio }: HalfComparison,
  { start }: HalvesFields,
): readonly string[] {
  const near = Math.abs(ratio - 1) < scatter;
  return [
    start === 'dive' &&
      'The first half holds the dive: with even effort it comes out faster, so a small positive split may be even swimming.',
    near &&
      `The halves differ by ${signedPercent(ratio - 1).replace(/^[+−]/, '')} %. One swimmer’s splits scatter by more than that from race to race: read it as even.`,
    interpolated &&
      'No time was taken at halfway, so it was read off a straight line between the times around it.',
  ].filter((sentence) => sentence !== false);
}
