import { LCM, SCY } from 'backhalf';
import { expect, test } from 'vitest';
import { linesOf } from '~/ui/csv';
import { lengthsOption } from '~/ui/lengths-text';
import { problemsOf, waitingFor } from '~/ui/problems';

test('what is wrong leads to its field, in the order given, and is what the answer waits for', () => {
  const problems = problemsOf('plan', {
    length: null,
    goal: 'Enter the goal time.',
    own: ['Lap 1 is no time.', 'Lap 3 is no time.'],
    swum: [],
  });
  expect(problems).toEqual([
    { id: 'plan-goal', message: 'Enter the goal time.' },
    { id: 'plan-own', message: 'Lap 1 is no time.' },
    { id: 'plan-own', message: 'Lap 3 is no time.' },
  ]);
  expect(waitingFor('The plan appears', problems)).toBe(
    'The plan appears once this is put right: Enter the goal time. And 2 more.',
  );
  expect(waitingFor('The plan appears', problems.slice(1, 2))).toBe(
    'The plan appears once this is put right: Lap 1 is no time.',
  );
});

test('a stretch of lengths is told with its distance once the pool is known', () => {
  expect(lengthsOption(1, null)).toEqual({ value: '1', label: '1 length' });
  expect(lengthsOption(2, LCM)).toEqual({ value: '2', label: '100 m (2 lengths)' });
  expect(lengthsOption(1, SCY).label).toBe('25 yd (1 length)');
});

test('a table’s lines start with its headings', () => {
  const table = { columns: ['Lap', 'Time'], rows: [{ head: '1', cells: ['31.40'] }] };
  expect(linesOf(table)).toEqual([
    ['Lap', 'Time'],
    ['1', '31.40'],
  ]);
});
