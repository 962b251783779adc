import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import {
  hundredths,
  parseSet,
  projectBrokenSwim,
  projectFromSet,
  readSet,
  SCM,
  splitsFromLaps,
} from 'backhalf';
import { expect, inject, test } from 'vitest';

const schemas = `${inject('project')}/node_modules/backhalf/dist/schemas/`;

const rep = splitsFromLaps(50, [3150, 3350].map(hundredths));
const set = { pool: SCM, repDistance: 100, reps: [rep, rep], sendOff: hundredths(9000) };

const validate = (type: string, value: unknown) => {
  const schema = JSON.parse(readFileSync(`${schemas}${type}.json`, 'utf8'));
  const ajv = new Ajv({ strict: true, allowUnionTypes: true });
  const check = ajv.compile(schema);
  // What a program would send: the JSON, not the object.
  return check(JSON.parse(JSON.stringify(value))) || check.errors;
};

test.each([
  ['SwumSet', set],
  ['Splits', rep],
  ['SetReading', readSet(set)],
  ['SetProjection', projectFromSet(set, { distance: 1500 })],
  ['BrokenSwimReading', projectBrokenSwim(set)],
  // A type that holds itself: a set of sets.
  ['PlannedSet', parseSet('3 x {4 x 100 on 1:30, 2 x {50 easy r 10}}')],
])('%s: what the library gives fits its schema', (type, value) => {
  expect(validate(type, value)).toBe(true);
});

test('a schema refuses what its type does', () => {
  expect(validate('SwumSet', { ...set, sendOff: 90.5 })).not.toBe(true);
  expect(validate('SwumSet', { ...set, sendoff: 9000 })).not.toBe(true);
});
