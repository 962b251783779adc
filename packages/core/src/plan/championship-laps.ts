// Written by scripts/measure-shapes.ts; a test measures again and compares.

/**
 * The mean laps of finals, 50 m each, in parts of 10,000 of the mean lap, by sex and race distance in
 * metres; `swims` is how many swims were counted.
 *
 * @see Official results of the Olympic Games 2000–2016, via the open dataset swimset.
 */
export const CHAMPIONSHIP_LAPS: readonly {
  readonly sex: 'W' | 'M';
  readonly distance: number;
  readonly swims: number;
  readonly laps: readonly number[];
}[] = [
  { sex: 'M', distance: 200, swims: 32, laps: [9404, 10083, 10277, 10236] },
  {
    sex: 'M',
    distance: 400,
    swims: 32,
    laps: [9339, 10037, 10156, 10215, 10170, 10161, 10080, 9842],
  },
  {
    sex: 'M',
    distance: 1500,
    swims: 32,
    laps: [
      9197, 9872, 9944, 9968, 9988, 9994, 10027, 10022, 10039, 10042, 10045, 10049, 10061, 10066,
      10032, 10060, 10055, 10080, 10075, 10103, 10078, 10109, 10083, 10127, 10102, 10103, 10091,
      10094, 9927, 9568,
    ],
  },
  { sex: 'W', distance: 200, swims: 32, laps: [9456, 10108, 10254, 10182] },
  {
    sex: 'W',
    distance: 400,
    swims: 32,
    laps: [9395, 10000, 10107, 10184, 10115, 10175, 10135, 9891],
  },
  {
    sex: 'W',
    distance: 800,
    swims: 32,
    laps: [
      9341, 9918, 10007, 10036, 10049, 10079, 10099, 10125, 10078, 10116, 10097, 10126, 10098,
      10112, 10054, 9665,
    ],
  },
];
