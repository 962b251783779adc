import { hundredths, LCM, SCY, splitsFromLaps } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { planCautions } from '../../../packages/core/src/plan/plan-cautions.js';
import { type ReadShape, shapeOf } from '../../../packages/core/src/plan/race-shape.js';

const edges = { startCredit: 0, finishLift: 0 };
const halves = { first: hundredths(6000), second: hundredths(6000), interpolated: false };
const difference = hundredths(0);
const plan = { pool: LCM, distance: 200, edges, halves, difference };
const of = (shape: ReadShape, changed: object = {}) =>
  planCautions(shape, { ...plan, ...changed }).map(({ code }) => code);
const even = shapeOf('even', 200);
const message = (shape: ReadShape, changed: object = {}) =>
  planCautions(shape, { ...plan, ...changed })[0]?.message;

test('a plain plan needs none', () => {
  expect(of(even)).toEqual([]);
  expect(of(shapeOf({ secondHalf: 0 }, 200))).toEqual([]);
  expect(of(even, { halves: null, difference: null })).toEqual([]);
});

describe('odd-hundredth', () => {
  test('where the halves are not as asked', () => {
    expect(of(even, { difference: -1 })).toEqual(['odd-hundredth']);
    expect(message(shapeOf({ secondHalf: 200 }, 200), { difference: 199 })).toContain(
      'differ by +1.99, not +2.00',
    );
  });

  test('not where dive or finish make them differ', () => {
    expect(of(even, { difference: 99, edges: { ...edges, startCredit: 99 } })).toEqual([]);
    expect(of(even, { difference: -99, edges: { ...edges, finishLift: 99 } })).toEqual([]);
  });
});

test('halfway between two walls is said to be', () => {
  expect(of(even, { halves: { ...halves, interpolated: true } })).toEqual(['halves-interpolated']);
});

describe('shape-borrowed', () => {
  const profile = splitsFromLaps(50, [2810, 3045, 3120, 3055].map(hundredths));

  test('a profile of the same distance is the swimmer’s own', () => {
    expect(of(shapeOf({ profile }, 200))).toEqual([]);
  });

  test('one of another distance is stretched', () => {
    expect(message(shapeOf({ profile }, 400), { distance: 400 })).toContain('swum over 200');
  });

  test('a championship shape is always that of others', () => {
    const text = message(shapeOf({ championship: 'W' }, 200));
    expect(text).toContain('32 swims in Olympic finals of women over 200 m');
    expect(text).not.toContain('stretched');
  });

  test('and says where it is stretched, by number or by unit', () => {
    const men = shapeOf({ championship: 'M' }, 200);
    expect(message(men, { distance: 250 })).toContain('stretched to 250 m');
    expect(message(men, { pool: SCY })).toContain('stretched to 200 yd');
  });
});
