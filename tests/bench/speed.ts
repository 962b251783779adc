// `npm run bench`: how fast the library is, as ratios to other code on the same values in the same run.
// Prints a table; ends with 1 where a bar is missed. Runs on what was built, as others would.
import {
  formatIsoDuration,
  formatTime,
  hundredths,
  parseTime,
  readSet,
  SCM,
  splitsFromLaps,
} from 'backhalf';
import { durationLibraries, readInDecimals } from './yardsticks.ts';

const ROUNDS = 40;

// From half a minute to half an hour, spread by a fixed rule.
const times = Array.from({ length: 5_000 }, (_, i) => hundredths(3_000 + ((i * 7_919) % 177_000)));
const texts = times.map((time) => formatTime(time));
const seconds = times.map((time) => (time / 100).toFixed(2));
const isos = times.map(formatIsoDuration);

const setOf = (count: number) => ({
  pool: SCM,
  repDistance: 100,
  sendOff: hundredths(9_000),
  reps: Array.from({ length: count }, (_, i) =>
    splitsFromLaps(50, [hundredths(3_150 + (i % 40)), hundredths(3_350 + ((i * 7) % 60))]),
  ),
});
const set = setOf(20);

export let sink: unknown; // what was computed goes somewhere, so that it is computed
const each =
  <T>(values: readonly T[], work: (value: T) => unknown) =>
  () => {
    for (const value of values) sink = work(value);
  };
const many = (work: () => unknown) => () => {
  for (let i = 0; i < 100; i++) sink = work();
};

/** Best time of each work, run turn by turn so that a busy machine slows all alike. */
function timed(works: readonly (() => void)[]): readonly number[] {
  const runs = works.map(() => [] as number[]);
  for (let round = -3; round < ROUNDS; round++) {
    works.forEach((work, i) => {
      const start = performance.now();
      work();
      if (round >= 0) runs[i]!.push(performance.now() - start); // the first rounds warm up
    });
  }
  return runs.map((each) => Math.min(...each));
}

interface Row {
  readonly what: string;
  readonly ours: () => void;
  readonly against: string;
  readonly theirs: () => void;
  /** Ours over theirs must be no more than this. */
  readonly bar: number;
}

const rows: readonly Row[] = [
  {
    what: 'parseTime',
    ours: each(texts, parseTime),
    against: 'Number() of the seconds',
    theirs: each(seconds, Number),
    bar: 4,
  },
  {
    what: 'formatTime',
    ours: each(times, (time) => formatTime(time)),
    against: 'toFixed(2) of the seconds',
    theirs: each(times, (time) => (time / 100).toFixed(2)),
    bar: 4,
  },
  ...durationLibraries.flatMap(({ name, parse, format }) => [
    {
      what: 'parseTime',
      ours: each(texts, parseTime),
      against: name,
      theirs: each(isos, parse),
      bar: 0.1,
    },
    {
      what: 'formatTime',
      ours: each(times, (time) => formatTime(time)),
      against: name,
      theirs: each(times, format),
      bar: 1,
    },
  ]),
  {
    what: 'readSet, 20 reps',
    ours: many(() => readSet(set)),
    against: 'the same figures in decimal.js',
    theirs: many(() => readInDecimals(set)),
    bar: 1,
  },
];

console.log('| ours | against | ours / theirs | at most |\n| --- | --- | ---: | ---: |');
let missed = 0;
const judge = (fine: boolean) => {
  if (!fine) missed++;
  return fine ? '' : ' (missed)';
};
for (const { what, ours, against, theirs, bar } of rows) {
  const [a = 0, b = 1] = timed([ours, theirs]);
  console.log(`| ${what} | ${against} | ${(a / b).toFixed(3)}${judge(a / b <= bar)} | ${bar} |`);
}

console.log('\n| reps | ms |\n| ---: | ---: |');
const grown = [1_000, 10_000, 100_000, 1_000_000].map((count) => {
  const large = setOf(count);
  const runs = [1, 2, 3].map(() => {
    const start = performance.now();
    sink = readSet(large);
    return performance.now() - start;
  });
  console.log(`| ${count} | ${Math.min(...runs).toFixed(1)} |`);
  return Math.min(...runs);
});
// 1 is linear, 2 is quadratic; memory that no longer fits the caches costs a part of the rest.
const power = Math.log10(grown.at(-1)! / grown[0]!) / 3;
console.log(
  `\nReading a set grows with the reps to the power of ${power.toFixed(2)}${judge(power < 1.5)}.`,
);
console.log(missed === 0 ? 'Every bar is met.' : `${missed} missed.`);
process.exitCode = missed === 0 ? 0 : 1;
