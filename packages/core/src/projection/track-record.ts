// Written by tests/reference/track-record with UPDATE_TRACK_RECORD=1; not by hand. The best times of
// each swimmer at one of the Olympic Games of 2000, 2004, 2008 and 2016 (official results, freestyle,
// 50 m pool), by the open dataset swimset. `covered`: swims in the 90 % range of the other Games alone.

/** Exponents of the power law through one swimmer's best times at two distances in metres. */
export const EXPONENTS_SEEN = [
  {
    between: [200, 400],
    swims: 102,
    who: 'men and women',
    mean: 1.07447,
    spread: 0.02182,
    covered: 91,
  },
  {
    between: [200, 800],
    swims: 14,
    who: 'women',
    mean: 1.05426,
    spread: 0.01279,
    covered: 12,
  },
  {
    between: [200, 1500],
    swims: 16,
    who: 'men',
    mean: 1.05645,
    spread: 0.01207,
    covered: 15,
  },
  {
    between: [400, 800],
    swims: 73,
    who: 'women',
    mean: 1.03549,
    spread: 0.01867,
    covered: 65,
  },
  {
    between: [400, 1500],
    swims: 81,
    who: 'men',
    mean: 1.04267,
    spread: 0.01222,
    covered: 72,
  },
] as const;

/** ln(swum / estimated) for methods fitted to two distances in metres. */
export const FITS_SEEN = [
  {
    method: 'critical-speed',
    from: [200, 400],
    to: 800,
    swims: 13,
    who: 'women',
    mean: 0.01658,
    spread: 0.01462,
    covered: 10,
  },
  {
    method: 'critical-speed',
    from: [200, 400],
    to: 1500,
    swims: 16,
    who: 'men',
    mean: 0.03048,
    spread: 0.01281,
    covered: 15,
  },
  {
    method: 'power-law',
    from: [200, 400],
    to: 800,
    swims: 13,
    who: 'women',
    mean: -0.00364,
    spread: 0.01983,
    covered: 10,
  },
  {
    method: 'power-law',
    from: [200, 400],
    to: 1500,
    swims: 16,
    who: 'men',
    mean: -0.02851,
    spread: 0.02324,
    covered: 15,
  },
] as const;
