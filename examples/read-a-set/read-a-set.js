// Reads a squad's timed set from a CSV file: node read-a-set.js saltmarsh-20x100.csv
//
// One rep a line: swimmer, rep, time at halfway, time at the end. A line that cannot be read is listed
// at the end with its reason; it costs no other line.
import { readFileSync } from 'node:fs';
import { findSetSlips, formatTime, parseTime, projectFromSet, readSet, SCM } from 'backhalf';
import { readSplitTable } from 'backhalf/tables';

// What the file does not say.
const POOL = SCM;
const DISTANCE = 100;
const SEND_OFF = parseTime('1:30.0');
const RACE = 1500;

const [file = 'saltmarsh-20x100.csv'] = process.argv.slice(2);
const table = readSplitTable(readFileSync(file, 'utf8'), { times: 'cumulative' });
const refused = table.refused.map(({ line, message }) => ({ line, message }));

const squad = new Map();
for (const { name, line, splits } of table.swims) {
  if (splits.marks.at(-1).distance === DISTANCE) {
    squad.set(name, [...(squad.get(name) ?? []), { line, splits }]);
  } else {
    refused.push({ line, message: `The time at ${DISTANCE} is missing.` });
  }
}

for (const [name, reps] of squad) {
  console.log(`${name}, ${reps.length} × ${DISTANCE} on ${formatTime(SEND_OFF, { decimals: 0 })}`);
  for (const [label, text] of report(reps)) console.log(`  ${label.padEnd(12)}${text}`);
  console.log();
}

const read = [...squad.values()].flat().length;
console.log(`${read} reps read, ${refused.length} lines refused`);
for (const { line, message } of refused.sort((a, b) => a.line - b.line)) {
  console.log(`  line ${line}: ${message}`);
}

/** What there is to say of one swimmer's reps, as labelled lines. */
function report(reps) {
  const set = setOf(reps.map(({ splits }) => splits));
  const { average, halves, honestPace, optimism, cautions } = readSet(set);
  if (halves === null) return [['average', formatTime(average)], ...said(cautions)];

  const race = projectFromSet(set, { distance: RACE });
  return [
    ['average', formatTime(average)],
    ['halves', `${formatTime(halves.first)} out, ${formatTime(halves.second)} back`],
    ['honest pace', `${formatTime(honestPace)} per 100`],
    ['optimism', `${formatTime(optimism, { signed: true })} per 100`],
    [`${RACE} m`, `${formatTime(race.time)}, not the ${formatTime(race.wholeReps)} of whole reps`],
    ...slips(set, reps),
    ...said(race.cautions),
  ];
}

/** A slip is likely, never certain: the figures stand as timed, and beside them as they would be. */
function slips(set, reps) {
  const found = findSetSlips(set);
  if (found.length === 0) return [];
  const mends = new Map(found.map(({ rep, mend }) => [rep, mend]));
  const mended = setOf(set.reps.map((splits, i) => mends.get(i + 1) ?? splits));
  const { pace, time } = projectFromSet(mended, { distance: RACE });
  return [
    ...found.map(({ rep, why }) => ['slip', `line ${reps[rep - 1].line}: ${why}`]),
    ['if mended', `${formatTime(pace)} per 100, ${formatTime(time)} for ${RACE} m`],
  ];
}

function said(cautions) {
  return cautions.map(({ message }) => ['caution', message]);
}

function setOf(reps) {
  return { pool: POOL, repDistance: DISTANCE, reps, sendOff: SEND_OFF };
}
