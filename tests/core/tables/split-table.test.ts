import { hundredths, isPacingError, lapsOf } from 'backhalf';
import { readSplitTable, type SplitTable } from 'backhalf/tables';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, lap } from '../../generators.js';

const laps = ({ swims }: SplitTable) => swims.map(({ name, splits }) => [name, ...lapsOf(splits)]);

describe('readSplitTable', () => {
  const mara = ['Mara Quill', 3150, 3350];
  const ivo = ['Ivo Tarn', 3210, 3290];

  test.each([
    ['commas', 'Swimmer,50,100\nMara Quill,31.50,33.50\nIvo Tarn,32.1,32.9'],
    [
      'semicolons and decimal commas',
      'Swimmer;50;100\r\nMara Quill;31,50;33,50\r\nIvo Tarn;32,1;32,9\r\n',
    ],
    [
      'tabs, units, blank lines',
      'Name\t50 m\t100 m\n\nMara Quill\t31.5\t33.5\n\n Ivo Tarn \t32.1\t32.9\n',
    ],
    ['times since the start', 'Swimmer,50,100\nMara Quill,31.50,1:05.00\nIvo Tarn,32.1,65.0'],
    [
      'quotes around decimal commas',
      'Swimmer,50,100\n"Mara Quill","31,5","33,5"\n"Ivo Tarn","32,1","32,9"',
    ],
    [
      'one mark a line',
      'Swimmer,Distance,Time\nMara Quill,50,31.5\nMara Quill,100,33.5\nIvo Tarn,50,32.1\nIvo Tarn,100,32.9',
    ],
    [
      'first and last names apart',
      'First name,Last name,50,100\nMara,Quill,31.5,33.5\nIvo,Tarn,32.1,32.9',
    ],
  ])('reads %s', (_, text) => {
    const table = readSplitTable(text);
    expect(laps(table)).toEqual([mara, ivo]);
    expect(table.refused).toEqual([]);
  });

  test('tells the reps of one swimmer apart, in either layout', () => {
    const wide = readSplitTable('Swimmer,Rep,50,100\nMara,1,31.5,33.5\nMara,2,31.6,33.4');
    const long = readSplitTable(
      'Swimmer,Rep,Distance,Time\nMara,1,50,31.5\nMara,1,100,33.5\nMara,2,50,31.6\nMara,2,100,33.4',
    );
    expect(wide.swims.map(({ rep }) => rep)).toEqual(['1', '2']);
    expect(laps(long)).toEqual(laps(wide));
  });

  test('needs no header where the lap distance is given', () => {
    expect(laps(readSplitTable('31.5\t33.5', { every: 50 }))).toEqual([['', 3150, 3350]]);
    expect(laps(readSplitTable('Mara\t31.5\t33.5', { every: 50 }))).toEqual([['Mara', 3150, 3350]]);
  });

  test('refuses a line with its reason and loses no other', () => {
    const table = readSplitTable(
      'Swimmer,50,100\nMara,31.5,soon\nIvo,,65\nBea,31.5,33.5\nNils,105,33',
    );
    expect(table.swims.map(({ name, line }) => [name, line])).toEqual([['Bea', 4]]);
    expect(table.refused.map(({ line, code }) => [line, code])).toEqual([
      [2, 'time-unreadable'],
      [3, 'no-mark-there'],
      [5, 'time-ambiguous'],
    ]);
  });

  test('takes a swim that stops early, and a missing mark among times since the start', () => {
    const short = readSplitTable('Swimmer,50,100,150\nMara,31.5,33.5,34\nIvo,32,33,');
    expect(laps(short)[1]).toEqual(['Ivo', 3200, 3300]);
    const gap = readSplitTable('Swimmer,50,100,150\nMara,31.5,1:05,1:39\nIvo,32,,1:39', {
      times: 'cumulative',
    });
    expect(gap.swims[1]?.splits.marks.map(({ distance }) => distance)).toEqual([50, 150]);
  });

  test('counts lines as they stand in the text, also past a quoted line break', () => {
    const table = readSplitTable('Swimmer,50,100\n"Mara\nQuill",31.5,33.5\nIvo,no,33');
    expect(table.refused[0]?.line).toBe(4);
  });

  test('says what is needed where nothing tells the distances', () => {
    expect(() => readSplitTable('31.5;33.5')).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });

  test('reads back any table it could have been given, with any separator and decimal sign', () => {
    const separators = fc.constantFrom(
      [',', '.'],
      [';', ','],
      ['\t', ','],
      ['\t', '.'],
      ['|', '.'],
    );
    const rows = fc.array(fc.array(lap, { minLength: 4, maxLength: 4 }), {
      minLength: 1,
      maxLength: 9,
    });
    fc.assert(
      fc.property(rows, separators, (swims, [separator = ',', point = '.']) => {
        const write = (time: number) =>
          `0:${String(Math.floor(time / 100)).padStart(2, '0')}.${String(time % 100).padStart(2, '0')}`;
        const small = swims.map((swim) => swim.map((time) => hundredths((time % 5999) + 1)));
        const body = small.map((swim, i) =>
          [`S${i}`, ...swim.map(write)].join(separator).replaceAll('.', point),
        );
        const text = [['Swimmer', 50, 100, 150, 200].join(separator), ...body].join('\n');
        const table = readSplitTable(text, { times: 'laps' });
        expect(laps(table)).toEqual(small.map((swim, i) => [`S${i}`, ...swim]));
      }),
    );
  });

  test('any input at all: a table or a PacingError', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), anything), anything, (text, options) => {
        try {
          readSplitTable(text as string, options as object);
        } catch (error) {
          expect(isPacingError(error)).toBe(true);
        }
      }),
    );
  });
});
