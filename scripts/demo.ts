// Prints the reading of the demo set, and where to open it: node scripts/demo.ts http://localhost:4321
import { formatTime, parseTime, projectFromSet, readSet, SCM, splitsFromLaps } from 'backhalf';
import { tuesday } from '../docs-site/src/calculators/read-a-set/example.ts';
import { queryOf } from '../docs-site/src/ui/address.ts';

const site = process.argv[2] ?? '';
const distance = Number(tuesday['distance']);
const race = Number(tuesday['race']);
const reps = tuesday.reps
  .split('\n')
  .map((line) => splitsFromLaps(distance / 2, line.split(' ').map(parseTime)));
const set = { pool: SCM, repDistance: distance, reps, sendOff: parseTime(tuesday.rest) };

const reading = readSet(set);
const projection = projectFromSet(set, { distance: race });
const rows: readonly (readonly [string, string])[] = [
  ['mean halves', `${formatTime(reading.halves!.first)} and ${formatTime(reading.halves!.second)}`],
  [
    'whole reps',
    `${formatTime(reading.repPace)} per 100, ${formatTime(projection.wholeReps)} for ${race}`,
  ],
  [
    'honest pace',
    `${formatTime(reading.honestPace!)} per 100, ${formatTime(projection.time)} for ${race}`,
  ],
  ['optimism', `${formatTime(projection.optimism, { signed: true })} over the race`],
];
console.log(`\nDemo: ${reps.length} × ${distance} m on ${tuesday.rest}, timed at the turn\n`);
for (const [name, text] of rows) console.log(`  ${name.padEnd(12)} ${text}`);
for (const { message } of projection.cautions) console.log(`\n  ! ${message}`);
console.log(
  `\nThe same set in the calculator:\n${site}/calculators/read-a-set/?${queryOf(tuesday)}\n`,
);
