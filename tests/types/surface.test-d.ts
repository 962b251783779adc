import {
  type Comparison,
  type Conversion,
  type CountedSwim,
  type CriticalSpeed,
  compareEstimates,
  convertPace,
  convertTime,
  type Estimate,
  type EstimatePair,
  fitCriticalSpeed,
  fitPowerLaw,
  type GoalPlace,
  type Halves,
  type Hundredths,
  halvesOf,
  hundredths,
  type Interval,
  LCM,
  type Mark,
  type OpenWaterEffectName,
  type OpenWaterLeg,
  PacingError,
  type PacingErrorCode,
  type Pool,
  type PowerLaw,
  parseTime,
  powerLawThrough,
  projectBrokenSwim,
  projectFromSet,
  type Race,
  REFERENCE_EXPONENTS,
  type ReferenceExponent,
  type Result,
  readSet,
  type SetReading,
  type Sex,
  type Splits,
  type Stroke,
  type SwimToConvert,
  type SwumSet,
  safeParseTime,
  splitsFromLaps,
  type TimeRange,
  type TimeWindow,
  type TrackRecordRow,
  type Trial,
  TURN_GAINS,
  type TurnGain,
  timeFromCriticalSpeed,
  timeReadings,
  trackRecord,
  type Unit,
} from 'backhalf';
import { readSplitTable, type SplitTable } from 'backhalf/tables';
import { expectTypeOf } from 'vitest';

// Read by the compiler, never run: tests/types/surface.test.ts asks it for complaints.

declare const bare: number;
declare const time: Hundredths;
declare const splits: Splits;
declare const set: SwumSet;
declare const pool: Pool;

// What the functions take and give.
expectTypeOf(hundredths).toEqualTypeOf<(n: number) => Hundredths>();
expectTypeOf(parseTime).toEqualTypeOf<(text: string) => Hundredths>();
expectTypeOf(safeParseTime('33.5')).toEqualTypeOf<Result<Hundredths>>();
expectTypeOf(timeReadings).parameter(1).toEqualTypeOf<TimeWindow | undefined>();
expectTypeOf(halvesOf).toEqualTypeOf<(swim: Splits) => Halves>();
expectTypeOf(readSet(set)).toEqualTypeOf<SetReading>();
expectTypeOf(projectFromSet(set, { distance: 1500 })).toExtend<Estimate>();
expectTypeOf(projectFromSet).parameter(1).toEqualTypeOf<Race>();
expectTypeOf(projectBrokenSwim).parameter(1).toEqualTypeOf<Race | undefined>();
expectTypeOf(readSplitTable('')).toEqualTypeOf<SplitTable>();
expectTypeOf<PacingError['code']>().toEqualTypeOf<PacingErrorCode>();

// What plain data may be written by hand.
expectTypeOf(LCM).toEqualTypeOf<Pool>();
expectTypeOf<{ length: 20; unit: 'yd' }>().toExtend<Pool>();
expectTypeOf<Unit>().toEqualTypeOf<'m' | 'yd'>();
expectTypeOf<{ distance: number; time: Hundredths }>().toExtend<Mark>();

// A time can be reckoned with as the number it is.
expectTypeOf(time + 1).toEqualTypeOf<number>();

// @ts-expect-error — a bare number is not a time: its unit is unknown
splitsFromLaps(50, [bare]);
// @ts-expect-error — a sum of times is a bare number until it is checked again
(time + time) satisfies Hundredths;
// @ts-expect-error — text is read by parseTime, not by hundredths
hundredths('33.50');
// @ts-expect-error — a swim cannot be changed once it is made
splits.marks[0]!.time = time;
// @ts-expect-error — nor can marks be added to it
splits.marks.push({ distance: 50, time });
// @ts-expect-error — a pool constant stays what it is
LCM.length = 25;
// @ts-expect-error — a pool is measured in metres or yards
({ length: 25, unit: 'ft' }) satisfies Pool;
// @ts-expect-error — a set without its pool says nothing about distance
({ repDistance: 100, reps: [splits] }) satisfies SwumSet;
// @ts-expect-error — an option that does not exist is a slip of the pen
readSet(set, { evenwithin: time });
// @ts-expect-error — the result may be an error: look before taking the value
safeParseTime('33.5').value;
// @ts-expect-error — an estimate is not a time: it has a range and assumptions
projectFromSet(set, { distance: 1500 }) satisfies Hundredths;
// @ts-expect-error — where no half was read there is no honest pace
readSet(set).honestPace satisfies Hundredths;
// @ts-expect-error — a code is one of those listed
new PacingError('no-such-code', 'A sentence.', pool);

// Trials, the models fitted to them, and estimates side by side.
declare const trials: readonly Trial[];
expectTypeOf<{ distance: number; time: Hundredths }>().toExtend<Trial>();
expectTypeOf(fitCriticalSpeed(trials)).toEqualTypeOf<CriticalSpeed>();
expectTypeOf(fitPowerLaw(trials)).toEqualTypeOf<PowerLaw>();
expectTypeOf<CriticalSpeed['intervals']>().toEqualTypeOf<{
  readonly speed: Interval;
  readonly reserve: Interval;
} | null>();
expectTypeOf(compareEstimates([]).pairs).toEqualTypeOf<readonly EstimatePair[]>();
expectTypeOf<Comparison['goal']>().toEqualTypeOf<readonly GoalPlace[] | null>();
expectTypeOf(REFERENCE_EXPONENTS).toEqualTypeOf<readonly ReferenceExponent[]>();
expectTypeOf(trackRecord([])).toEqualTypeOf<readonly TrackRecordRow[]>();
// @ts-expect-error — there is no exponent that fits everybody: it must be given
powerLawThrough({ distance: 400, time });
// @ts-expect-error — a model of one kind says nothing to the other
timeFromCriticalSpeed(fitPowerLaw(trials), 1500);
// @ts-expect-error — two trials have no standard errors: look before taking one
fitCriticalSpeed(trials).standardErrors.speed;

// Conversions, stroke counts and open water.
declare const swimToConvert: SwimToConvert;
expectTypeOf(convertTime(swimToConvert, LCM)).toEqualTypeOf<Conversion>();
expectTypeOf<Conversion['range'] | Estimate['range']>().toEqualTypeOf<TimeRange | null>();
expectTypeOf<Conversion['range']>().toEqualTypeOf<Estimate['range']>();
expectTypeOf<SwimToConvert['stroke']>().toEqualTypeOf<Stroke>();
expectTypeOf<SwimToConvert['sex']>().toEqualTypeOf<Sex | undefined>();
expectTypeOf(TURN_GAINS).toEqualTypeOf<readonly TurnGain[]>();
expectTypeOf<{ distance: number; time: Hundredths; cycles: number }>().toExtend<CountedSwim>();
expectTypeOf<{ distance: number }>().toExtend<OpenWaterLeg>();
expectTypeOf<OpenWaterEffectName>().toEqualTypeOf<'drafting' | 'wetsuit'>();
// @ts-expect-error — what a turn gains is never guessed
convertPace(time, LCM, pool, {});
// @ts-expect-error — a stroke is one of five
swimToConvert.stroke satisfies 'free' | 'back';
