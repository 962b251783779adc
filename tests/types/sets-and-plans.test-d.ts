import {
  assignTouches,
  type CirclingLane,
  clockReadings,
  type DeckPlan,
  groupLanes,
  type Hundredths,
  hundredths,
  type LaneSwimmer,
  type LaneTiming,
  laneTraffic,
  type PlannedSet,
  paceCard,
  parseSet,
  planRace,
  type RacePlan,
  type Recovery,
  reserveThrough,
  SCM,
  type SetPaces,
  setTotals,
  type Touch,
} from 'backhalf';
import { expectTypeOf } from 'vitest';

// Read by the compiler, never run, as surface.test-d.ts is.

declare const time: Hundredths;
declare const plan: RacePlan;

// What the functions take and give.
expectTypeOf(parseSet('8 x 100')).toEqualTypeOf<PlannedSet>();
expectTypeOf(setTotals).parameter(1).toEqualTypeOf<SetPaces | undefined>();
expectTypeOf(groupLanes).parameter(0).toEqualTypeOf<readonly LaneSwimmer[]>();
expectTypeOf(laneTraffic).parameter(0).toEqualTypeOf<CirclingLane>();
expectTypeOf(clockReadings).parameter(1).toEqualTypeOf<LaneTiming>();
expectTypeOf(assignTouches).parameter(0).toEqualTypeOf<DeckPlan>();
expectTypeOf(assignTouches).parameter(1).toEqualTypeOf<readonly (Hundredths | Touch)[]>();
expectTypeOf(reserveThrough).parameter(2).toExtend<{ readonly recovery: Recovery }>();
expectTypeOf(planRace).returns.toEqualTypeOf<RacePlan>();
expectTypeOf(paceCard).parameter(0).toEqualTypeOf<RacePlan>();

// @ts-expect-error — a recovery with a time constant must say it
({ form: 'integral' }) satisfies Recovery;
// @ts-expect-error — a shape is one of those named, or given in numbers
planRace({ pool: SCM, distance: 200, goal: time, shape: 'brave' });
// @ts-expect-error — a lane is told by its swimmers' paces, not by their times as text
groupLanes([{ name: 'Ada', pace: '1:10' }], { lanes: 1 });
// @ts-expect-error — a touch is a time; where and what may be added
({ lane: 3 }) satisfies Touch;
// @ts-expect-error — a plan's goal stays what was planned
plan.goal = hundredths(12_000);
