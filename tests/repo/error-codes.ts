import {
  convertPace,
  convertTime,
  crossCurrent,
  fitCriticalSpeed,
  fitPowerLaw,
  fromSeconds,
  groupLanes,
  halvesOf,
  hundredths,
  LCM,
  lapsOf,
  lengthsIn,
  type PacingErrorCode,
  pacingProfile,
  parseTime,
  projectFromSet,
  readSet,
  SCM,
  SCY,
  splitsFromLaps,
  splitsFromMarks,
} from 'backhalf';

const swim = (every: number, ...laps: number[]) => splitsFromLaps(every, laps.map(hundredths));
const mark = (distance: number, time: number) => ({ distance, time: hundredths(time) });
const set = { pool: SCY, repDistance: 100 };

/** One call for each code that raises it. A new code needs a row here: the compiler asks for it. */
export const errorCodes: Record<PacingErrorCode, () => unknown> = {
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
  'gain-missing': () => convertPace(hundredths(6500), SCM, LCM, {}),
  'current-too-strong': () => crossCurrent(1, 1),
  'too-few-trials': () => fitCriticalSpeed([mark(400, 29_500)]),
  'trial-repeated': () => fitPowerLaw([mark(400, 29_500), mark(400, 29_600)]),
  'trials-contradict': () => fitCriticalSpeed([mark(200, 14_000), mark(400, 27_000)]),
};
