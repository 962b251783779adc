// The whole public surface, by floor.

export type { Caution, CautionCode } from './caution.js';
// course
export type { CollegiateMethod } from './course/collegiate.js';
export type {
  Conversion,
  ConversionMethod,
  ConvertTimeOptions,
  SwimToConvert,
} from './course/conversion.js';
export { convertDistance } from './course/convert-distance.js';
export { type ConvertPaceOptions, convertPace } from './course/convert-pace.js';
export { convertTime } from './course/convert-time.js';
export type { Sex, Stroke } from './course/event.js';
export { points, timeForPoints } from './course/points.js';
export { distanceAt, LCM, lengthsIn, type Pool, SCM, SCY, type Unit } from './course/pool.js';
export { TURN_GAINS, type TurnGain } from './course/turn-gains.js';
export type { TurnOptions } from './course/turn-model.js';
export { isPacingError, PacingError, type PacingErrorCode, type Result } from './errors.js';
// plan
export { judgePlan, type PlanJudgement, type PlanJudgementRow } from './plan/judge-plan.js';
export { planOpenWater } from './plan/open-water.js';
export {
  type CrossCurrent,
  type CurrentReading,
  crossCurrent,
  readCurrent,
} from './plan/open-water-current.js';
export {
  OPEN_WATER_EFFECTS,
  type OpenWaterEffect,
  type OpenWaterEffectName,
  type SpeedRange,
  speedWithEffect,
} from './plan/open-water-effects.js';
export type { OpenWaterLeg } from './plan/open-water-legs.js';
export type { OpenWaterOptions, OpenWaterPlan, OpenWaterRow } from './plan/open-water-plan.js';
export { type PaceCard, type PaceCardRow, paceCard } from './plan/pace-card.js';
export { planRace, type RaceOptions, type RacePlan } from './plan/race-plan.js';
export type { RaceShape } from './plan/race-shape.js';
export {
  type RepTarget,
  type RepTargets,
  type TargetsForOptions,
  targetsFor,
} from './plan/rep-targets.js';
// projection
export { type BrokenSwimReading, projectBrokenSwim } from './projection/broken-swim.js';
export {
  type Comparison,
  compareEstimates,
  type EstimatePair,
  type GoalPlace,
} from './projection/compare-estimates.js';
export { type CriticalSpeed, fitCriticalSpeed } from './projection/critical-speed.js';
export { timeFromCriticalSpeed } from './projection/critical-speed-time.js';
export type { Estimate } from './projection/estimate.js';
export { projectFromSet, type SetProjection } from './projection/from-set.js';
export type { Interval } from './projection/line-fit.js';
export { fitPowerLaw, type PowerLaw, powerLawThrough } from './projection/power-law.js';
export { timeFromPowerLaw } from './projection/power-law-time.js';
export type { Race } from './projection/race.js';
export type { Recovery } from './projection/recovery.js';
export { REFERENCE_EXPONENTS, type ReferenceExponent } from './projection/reference-exponents.js';
export {
  type ReserveOptions,
  type ReserveStep,
  type ReserveTrace,
  reserveThrough,
} from './projection/reserve.js';
export { type ImpliedTimeOptions, impliedTime } from './projection/reserve-time.js';
export { type RestGain, restGain } from './projection/rest-gain.js';
export { type TrackRecordRow, trackRecord } from './projection/track-record-table.js';
export type { Trial } from './projection/trial.js';
// sets
export { type ConvertSendOffOptions, convertSendOff } from './sets/convert-send-off.js';
export {
  type AssignedTouch,
  type AssignTouchesOptions,
  assignTouches,
  type DeckReading,
  type MissingTouch,
  type TouchReading,
} from './sets/deck/assign-touches.js';
export type { DeckMark, DeckPlan, DeckSwimmer, Touch } from './sets/deck/deck-plan.js';
export { formatSet } from './sets/format-set.js';
export {
  groupLanes,
  type LaneGroup,
  type LaneOptions,
  type LanePlan,
  type LaneSwimmer,
} from './sets/group-lanes.js';
export type { LaneObjective } from './sets/lane-objective.js';
export type { LaneTiming } from './sets/lane-timing.js';
export { type CirclingLane, laneTraffic } from './sets/lane-traffic.js';
export { clockFinishes, clockReadings } from './sets/pace-clock.js';
export { parseSet, safeParseSet } from './sets/parse-set.js';
export type {
  PlannedSet,
  RepsShape,
  SetBlock,
  SetDetails,
  SetEffort,
  SetItem,
  SetKind,
  SetNote,
  SetNoteCode,
  SetRounds,
  SetStroke,
  SetSwims,
  SwimManner,
  TextSpan,
} from './sets/planned-set.js';
export { type ReadSetOptions, type RepReading, readSet, type SetReading } from './sets/read-set.js';
export { fastestSendOff, restOn, type SendOffOptions, sendOffFor } from './sets/send-off.js';
export type { PlannedSwim } from './sets/set-clock.js';
export { practiceDuration, type SetDuration, setDuration } from './sets/set-duration.js';
export type { SetPaces } from './sets/set-paces.js';
export { findSetSlips, type SetSlip } from './sets/set-slips.js';
export { type BlockTotals, type SetTotals, setTotals } from './sets/set-totals.js';
export type { SwumSet } from './sets/swum-set.js';
// splits
export {
  type CompareHalvesOptions,
  compareHalves,
  type HalfComparison,
  type Halves,
  halvesOf,
  type SplitVerdict,
} from './splits/halves.js';
export { lapsOf } from './splits/laps.js';
export { type PacingProfile, pacingProfile } from './splits/profile.js';
export type { SlipKind } from './splits/slips/finding.js';
export { findSlips, type Slip } from './splits/slips.js';
export {
  type Mark,
  type Splits,
  splitsFromCumulative,
  splitsFromLaps,
  splitsFromMarks,
} from './splits/splits.js';
export {
  type CountedSwim,
  type StrokeMetrics,
  strokeMetrics,
  strokeRate,
} from './splits/stroke-metrics.js';
// time
export { type FormatTimeOptions, formatTime } from './time/format-time.js';
export { type Hundredths, hundredths } from './time/hundredths.js';
export { formatIsoDuration, parseIsoDuration, safeParseIsoDuration } from './time/iso-duration.js';
export { officialTime } from './time/official-time.js';
export { pacePer, timeAtPace } from './time/pace.js';
export { parseTime, safeParseTime } from './time/parse-time.js';
export { fromSeconds, toSeconds } from './time/seconds.js';
export type { TimeRange } from './time/time-range.js';
export { type TimeWindow, timeReadings } from './time/time-readings.js';
