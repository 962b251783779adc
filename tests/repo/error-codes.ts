import {
  assignTouches,
  convertPace,
  convertTime,
  crossCurrent,
  fitCriticalSpeed,
  fitPowerLaw,
  fromSeconds,
  groupLanes,
  halvesOf,
  hundredths,
  impliedTime,
  LCM,
  lapsOf,
  lengthsIn,
  type PacingErrorCode,
  pacingProfile,
  parseSet,
  parseTime,
  projectFromSet,
  readSet,
  restGain,
  SCM,
  SCY,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';
import { timelineOf } from '../../packages/core/src/sets/timeline.js';

const swim = (every: number, ...laps: number[]) => splitsFromLaps(every, laps.map(hundredths));
const mark = (distance: number, time: number) => ({ distance, time: hundredths(time) });
const set = { pool: SCY, repDistance: 100 };

/** One call for each code that raises it. A new code needs a row here: the compiler asks for it. */
export const errorCodes: Record<PacingErrorCode, () => unknown> = {
  'cannot-tell-apart': () => {
    const pair = ['Mara', 'Ivo'].map((name) => ({ name, repTime: hundredths(6500) }));
    const plan = { swimmers: pair, reps: 2, repDistance: 100, sendOff: hundredths(9000) };
    return assignTouches({ ...plan, stagger: hundredths(0), marks: 'finish' }, []);
  },
  'not-measured': () => restGain(100, hundredths(3000)),
  'reserve-does-not-fit': () => {
    const sprint = { pool: SCM, repDistance: 25, reps: [swim(25, 1500)] };
    return impliedTime(sprint, { reserve: 100, recovery: { form: 'linear' } });
  },
  'wrong-shape': () => readSet(JSON.parse('"ten 100s"')),
  'not-a-time': () => hundredths(33.5),
  'out-of-range': () => fromSeconds(Number.NaN),
  'unknown-choice': () => lengthsIn({ length: 25, unit: 'ft' as 'yd' }, 100),
  'too-large': () => hundredths(2 ** 60),
  'time-unreadable': () => parseTime('1:75'),
  'time-ambiguous': () => parseTime('105'),
  'not-whole-lengths': () => lengthsIn(SCY, 110),
  'marks-out-of-order': () => splitsFromMarks([mark(100, 6500), mark(50, 3150)]),
  'no-mark-there': () => lapsOf(swim(100, 6500, 6600), 75),
  'halfway-not-bracketed': () => halvesOf(swim(100, 6500)),
  'laps-uneven': () =>
    pacingProfile(splitsFromMarks([mark(50, 3000), mark(150, 9000), mark(200, 12_500)])),
  'too-few-laps': () => pacingProfile(swim(50, 3000)),
  'too-few-reps': () => projectFromSet({ ...set, reps: [] }, { distance: 1650 }),
  'too-few-lanes': () =>
    groupLanes(
      [
        { name: 'Mara Quill', pace: hundredths(6500) },
        { name: 'Ivo Tarn', pace: hundredths(6700) },
      ],
      { lanes: 1, maxPerLane: 1 },
    ),
  'rep-distance-differs': () => readSet({ ...set, reps: [swim(50, 3150)] }),
  'no-published-factor': () =>
    convertTime({ time: hundredths(6500), distance: 100, stroke: 'free', from: SCM }, LCM),
  'gain-missing': () => convertPace(hundredths(6500), SCM, LCM, JSON.parse('{}')),
  'current-too-strong': () => crossCurrent(1, 1),
  'too-few-trials': () => fitCriticalSpeed([mark(400, 29_500)]),
  'trial-repeated': () => fitPowerLaw([mark(400, 29_500), mark(400, 29_600)]),
  'trials-contradict': () => fitCriticalSpeed([mark(200, 14_000), mark(400, 27_000)]),
  'set-unreadable': () => parseSet('4 x 100 quickly'),
  'set-ambiguous': () => parseSet('10 x 100 on :30'),
  'set-contradiction': () => parseSet('broken 400: 3 x 100 r 10'),
  'set-incomplete': () => timelineOf(parseSet('4 x 100 on 1:30'), {}),
  'too-many-reps': () => parseSet('9999 x 25 + 9999 x 25'),
  'breath-holding': () => parseSet('8 x 25 underwater'),
};
