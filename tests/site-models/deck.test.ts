import { hundredths, parseTime, readSet, SCM } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltmarsh } from '~/calculators/deck/example';
import { type DeckFields, shape } from '~/calculators/deck/fields';
import { addressOf, viewOf } from '~/calculators/deck/model';
import { repTable, sentenceOf, swimmerResults } from '~/calculators/deck/result';
import { bounce, withoutLast, withTap, withWord } from '~/calculators/deck/tapping';
import { missingText, touchRows } from '~/calculators/deck/touch-rows';
import { readTaps, type Tap, tapsText } from '~/calculators/deck/touches-text';
import { shape as setShape, viewOf as setViewOf } from '~/calculators/read-a-set/model';
import { readQuery } from '~/ui/address';
import { readSwimmers } from '~/ui/swimmers-text';

const view = (changed: Partial<DeckFields> = {}) =>
  viewOf({ ...saltmarsh, ...changed } as DeckFields);
const rows = (changed: Partial<DeckFields> = {}) => {
  const { taps, reading } = view(changed);
  return touchRows(taps, reading!);
};

const two = {
  swimmers: 'Mara 1:05\nIvo 1:10',
  reps: '1',
  'send-off': '1:40',
  touches: '31.40 39.10 65.00 74.90',
};

describe('timing a set on deck', () => {
  test('tells whose each touch was, and finds the marks that have none', () => {
    expect(rows(two).map(({ text }) => text)).toEqual([
      'Mara, rep 1, halfway',
      'Ivo, rep 1, halfway',
      'Mara, rep 1, finish',
      'Ivo, rep 1, finish',
    ]);
    const { reading } = view({ ...two, touches: '31.40 39.10 74.90 180.00' });
    expect(missingText(reading!)).toContain('Mara, rep 1, finish');
  });

  test('shows in its example a forgotten touch, one that came twice, and two who came in together', () => {
    const found = rows();
    expect(missingText(view().reading!)).toEqual(['Ivo Tarn, rep 2, finish']);
    expect(found.filter(({ text }) => text === 'nobody’s')).toHaveLength(1);
    const doubtful = found.filter((row) => row.doubtful);
    expect(doubtful.map(({ text }) => text)).toEqual([
      'Ivo Tarn, rep 4, finish',
      'Bea Loxley, rep 4, finish',
    ]);
    expect(doubtful[0]?.choices.map(({ text }) => text)).toEqual([
      'Ivo Tarn, rep 4, finish',
      'Bea Loxley, rep 4, finish',
      'nobody’s',
    ]);
    expect(found.filter((row) => !row.doubtful).every(({ choices }) => choices.length === 0)).toBe(
      true,
    );
  });

  test('takes a person’s word, reads the other touch by it, and gives the word back', () => {
    const doubtful = rows().filter((row) => row.doubtful);
    const [first, second] = doubtful;
    const other = first!.choices[1]!;
    const touches = withWord(saltmarsh.touches, first!.index, other.word);
    const after = rows({ touches });
    expect(after[first!.index]).toMatchObject({ text: other.text, said: true, doubtful: false });
    expect(after[second!.index]?.text).toBe('Ivo Tarn, rep 4, finish');
    expect(withWord(touches, first!.index, null)).toBe(saltmarsh.touches);

    const nobody = withWord(saltmarsh.touches, first!.index, 'nobody');
    expect(rows({ touches: nobody })[first!.index]).toMatchObject({ text: 'nobody’s', said: true });
    expect(rows({ touches: nobody })).toHaveLength(rows().length);
  });

  test('while timing, what is shown of a touch does not change with later ones', () => {
    const early = saltmarsh.touches.split(' ').slice(0, 20).join(' ');
    const live = rows({ phase: 'timing' });
    expect(rows({ phase: 'timing', touches: early })).toEqual(live.slice(0, 20));
  });

  test('gives each swimmer the reps, and opens them in the calculator that reads a set', () => {
    const { pool, plan, reading } = view();
    const results = swimmerResults(saltmarsh, pool!, plan!, reading!);
    expect(results.map(({ name, timed }) => [name, timed])).toEqual([
      ['Mara Quill', '4 of 4'],
      ['Ivo Tarn', '3 of 4'],
      ['Bea Loxley', '4 of 4'],
      ['Jun Marlow', '4 of 4'],
    ]);
    for (const [i, { href }] of results.entries()) {
      const query = href!.slice(href!.indexOf('?'));
      const blank = Object.fromEntries(Object.keys(setShape).map((name) => [name, '']));
      const { fields, problems } = readQuery(query, blank as never, setShape as never)!;
      expect(problems).toEqual([]);
      const opened = setViewOf(fields as never).result!;
      const reps = reading!.swims[i]!.reps.filter((rep) => rep !== null);
      const own = readSet({ pool: SCM, repDistance: 100, reps, sendOff: parseTime('1:50') });
      expect(opened.reading).toEqual(own);
    }
  });

  test('lays rep times side by side, a dash for what is missing', () => {
    const { plan, reading } = view();
    const { caption, columns, rows: reps } = repTable(reading!, plan!);
    expect(caption).toBe('Rep times, 4 × 100 on 1:50');
    expect(columns).toEqual(['Rep', 'Mara Quill', 'Ivo Tarn', 'Bea Loxley', 'Jun Marlow']);
    expect(reps[1]?.cells[1]).toBe('–');
    expect(reps.flatMap(({ cells }) => cells).filter((cell) => cell === '–')).toHaveLength(1);
    expect(sentenceOf(1, 2, 0)).toBe('1 touch, 2 are doubtful, 0 marks have none.');
  });

  test('needs lanes where two leave together, and says so before the start', () => {
    const lanes = { swimmers: 'Mara 1:05 1\nIvo 1:10 2', touches: '' };
    expect(view(lanes).plan).toBeNull();
    expect(view(lanes).errors['swimmers']?.[0]).toMatch(/let each touch say its lane/);
    const asked = view({ ...lanes, buttons: 'lanes' });
    expect(asked.plan).not.toBeNull();
    expect(asked.lanes).toEqual([1, 2]);
    const touched = rows({
      ...lanes,
      buttons: 'lanes',
      touches: '66.00l2 67.00l1',
      marks: 'finish',
    });
    expect(touched.map(({ text }) => text)).toEqual(['Ivo, rep 1, finish', 'Mara, rep 1, finish']);
  });

  test('starts a new set though the touches of the last one do not fit its swimmers', () => {
    const lanes = { swimmers: 'Mara 1:05 1\nIvo 1:10 2', buttons: 'lanes' };
    const { plan, reading, misfit } = view(lanes);
    expect(plan).not.toBeNull();
    expect(reading).toBeNull();
    expect(misfit).toMatch(/^The touches do not fit these swimmers\./);
  });

  test('says of each field what would do', () => {
    expect(view({ swimmers: '' }).errors['swimmers']).toEqual([
      'Enter the swimmers, one a line: name, expected time.',
    ]);
    expect(view({ 'send-off': '' }).errors['send-off']).toEqual(['Enter the send-off.']);
    expect(view({ reps: '0' }).plan).toBeNull();
    const odd = view({ touches: '31.40 soon 65.00' });
    expect(odd.errors['touches']).toEqual([
      'The address holds “soon” for a touch; it was left out.',
    ]);
    expect(odd.taps).toHaveLength(2);
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...saltmarsh, touches: '31.40h 39.10*2.1h 65.00l2*x', phase: 'timing' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, saltmarsh, shape)).toEqual({ fields, problems: [] });
  });
});

describe('tapping', () => {
  const at = (time: number, says = {}): Tap => ({ time: hundredths(time), ...says });

  test('adds a touch, and takes the last one back', () => {
    const { touches, said } = withTap('31.40', at(3910));
    expect(touches).toBe('31.40 39.10');
    expect(said).toBe('');
    expect(withoutLast(touches)).toEqual({
      touches: '31.40',
      said: 'The touch at 39.10 was undone.',
    });
    expect(withoutLast('').said).toBe('There is no touch to undo.');
  });

  test('ignores a second touch of one button within 150 ms, and says so', () => {
    expect(bounce).toBe(15);
    expect(withTap('31.40', at(3148))).toEqual({
      touches: '31.40',
      said: 'A second touch 0.08 s after the last was ignored.',
    });
    expect(withTap('31.40', at(3155)).touches).toBe('31.40 31.55');
    expect(withTap('31.40l1', at(3142, { lane: 2 })).touches).toBe('31.40l1 31.42l2');
    expect(withTap('31.40l1', at(3142, { lane: 1 })).touches).toBe('31.40l1');
    expect(withTap('31.40h', at(3142, { mark: 'finish' })).touches).toBe('31.40h 31.42f');
    expect(withTap('31.40l1 31.44l2', at(3148, { lane: 1 })).touches).toBe('31.40l1 31.44l2');
  });

  test('keeps every touch as text, whatever was said of it', () => {
    const mark = fc.constantFrom('halfway' as const, 'finish' as const);
    const word = fc.oneof(
      fc.constant('nobody' as const),
      fc.record({ swimmer: fc.nat(99), rep: fc.integer({ min: 1, max: 100 }), mark }),
    );
    const tap = fc.record(
      {
        time: fc.integer({ min: 1, max: 2_000_000 }).map(hundredths),
        lane: fc.integer({ min: 1, max: 10 }),
        mark,
        word,
      },
      { requiredKeys: ['time'] },
    );
    fc.assert(
      fc.property(fc.array(tap), (taps) => {
        expect(readTaps(tapsText(taps))).toEqual({ taps, unread: [] });
      }),
    );
  });
});

describe('reading swimmers', () => {
  const read = (text: string) => readSwimmers(text, 100).swimmers;
  const mara = { name: 'Mara Quill', time: 6500 };

  test.each([
    ['typed', 'Mara Quill 1:05'],
    ['from a spreadsheet', 'Mara Quill\t1:05.0'],
    ['with headings', 'Name\tTime\nMara Quill\t1:05'],
    ['with a number', '1. Mara Quill 1:05,0'],
    ['with commas', 'Mara Quill,1:05'],
    ['with semicolons', 'Mara Quill; 65,0'],
  ])('%s', (_, text) => expect(read(text)).toEqual([mara]));

  test.each(['Mara Quill 1:05 2', 'Mara Quill\t1:05\tL2', 'Mara Quill,1:05,lane 2'])(
    '%s, with a lane',
    (text) => expect(read(text)).toEqual([{ ...mara, lane: 2 }]),
  );

  test('asks where a time can be read in two ways, and where a part is missing', () => {
    const { times, errors, swimmers } = readSwimmers('Mara 105\nIvo\n1:10', 100);
    expect(times.times[0]?.choices).toEqual([6500, 10_500]);
    expect(errors).toEqual([
      'Mara: “105” could be 1:05.00 or 1:45.00. Choose one.',
      'Ivo has no expected time; write it behind the name, like 1:05.',
      'Line 3 has no name; write one before the time.',
    ]);
    expect(swimmers).toEqual([]);
  });

  test('takes a name without a time for a swimmer, not for a heading, and counts lines as they stand', () => {
    expect(readSwimmers('Mara Quill\n\n1:05', 100)).toMatchObject({
      errors: [
        'Mara Quill has no expected time; write it behind the name, like 1:05.',
        'Line 3 has no name; write one before the time.',
      ],
      times: { leftOut: [] },
    });
    expect(readSwimmers('Swimmer;Pace\n1:05', 100).errors).toEqual([
      'Line 2 has no name; write one before the time.',
    ]);
  });

  test('whatever stands in the fields, it reads them or says why not', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 30 }),
      fc
        .array(fc.constantFrom('Mara', '1:05', '105', '2', '\n', '\t', ',', 'lane', '65.00l2*1.1f'))
        .map((words) => words.join(' ')),
      fc.constantFrom('4', '100', '1:40', '0:05'),
    );
    const fields = fc.record(
      Object.fromEntries(
        Object.entries(shape).map(([name, choices]) => [
          name,
          choices === 'any' ? text : fc.constantFrom(...choices),
        ]),
      ),
    ) as fc.Arbitrary<DeckFields>;
    fc.assert(
      fc.property(fields, text, (given, touches) => {
        for (const all of [given, { ...saltmarsh, touches }, { ...given, ...two }]) {
          const { plan, reading, misfit, taps, errors } = viewOf(all as DeckFields);
          const wrong = Object.entries(errors).some(([name, e]) => name !== 'touches' && e.length);
          expect(plan === null).toBe(wrong);
          expect(reading === null).toBe(plan === null || misfit !== null);
          if (reading !== null) {
            expect(touchRows(taps, reading)).toHaveLength(taps.length);
            expect(JSON.stringify(touchRows(taps, reading))).not.toMatch(/NaN|undefined/);
          }
        }
      }),
    );
  });
});
