import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { saltmarsh } from '~/calculators/send-offs/example';
import { type SendOffFields, shape } from '~/calculators/send-offs/fields';
import { addressOf, viewOf } from '~/calculators/send-offs/model';
import { handTable, squadTables } from '~/calculators/send-offs/Results';
import { readQuery } from '~/ui/address';

const view = (changed: Partial<SendOffFields>) =>
  viewOf({ ...saltmarsh, ...changed } as SendOffFields);
const lane = (changed: Partial<SendOffFields>) => {
  const { lane: found, errors } = view({ what: 'lane', ...changed });
  expect(errors).toEqual({});
  return found!;
};
const plan = (changed: Partial<SendOffFields>) => {
  const { plan: found, errors } = view({ what: 'squad', ...changed });
  expect(errors).toEqual({});
  return found!;
};

describe('the send-off of one lane', () => {
  test('gives at least the rest wanted, in fives', () => {
    expect(lane({ swim: '1:12', rest: '20' })).toMatchObject({ sendOff: 9500, rest: 2300 });
    expect(lane({ swim: '1:05', rest: '20' })).toMatchObject({ sendOff: 8500, rest: 2000 });
    expect(lane({ swim: '1:05,01', rest: '20' })).toMatchObject({ sendOff: 9000, rest: 2499 });
  });

  test('shows what five seconds less would leave, where the swim still fits', () => {
    expect(lane({}).shorter).toEqual({ sendOff: 9000, rest: 1800 });
    expect(lane({ rest: '0' }).shorter).toBeNull();
  });

  test('tells the hand for each swimmer, until it starts over', () => {
    const table = handTable(lane({ swim: '1:07', rest: '20', reps: '4', swimmers: '2' }));
    expect(table.rows.map(({ cells }) => cells)).toEqual([
      ['60 → 07', '05 → 12'],
      ['30 → 37', '35 → 42'],
    ]);
    expect(table.caption).toMatch(/the same again/);
    expect(handTable(lane({ reps: '4' })).rows).toHaveLength(4);
    expect(handTable(lane({ reps: '4' })).caption).not.toMatch(/again/);
  });

  test('numbers the marks of the clock by the reps that leave there', () => {
    expect(lane({ swim: '1:07', rest: '20', reps: '5 reps' }).marks).toEqual([
      { at: 0, reps: [1, 3, 5] },
      { at: 3000, reps: [2, 4] },
    ]);
  });

  test('says how long the set takes, and warns of a lane too full', () => {
    const { duration } = lane({ swim: '1:07', rest: '20', reps: '10', swimmers: '1' });
    expect(duration).toMatchObject({ finished: 87700, booked: 90000 });
    const full = lane({ distance: '25', swim: '20', rest: '10', swimmers: '8' });
    expect(full.cautions.join(' ')).toMatch(/make the lane smaller/);
  });

  test('asks for what is missing', () => {
    expect(view({ what: 'lane', swim: '' }).errors).toEqual({ swim: ['Enter the time of a rep.'] });
    expect(view({ what: 'lane', reps: '0' }).errors).toEqual({ reps: ['Reps must be 1 or more.'] });
  });
});

describe('a squad put into lanes', () => {
  test('reads names and paces as a spreadsheet gives them', () => {
    const tables = [
      'Mara Quill\t1:05\nIvo Tarn\t1:12,5\nBea Loxley\t1:08',
      'Name;Pace\nMara Quill;1:05\nIvo Tarn;1:12,5\nBea Loxley;1:08',
      'Mara Quill, 1:05\nIvo Tarn, 1:12.5\nBea Loxley, 1:08',
    ];
    for (const squad of tables) {
      const { lanes } = plan({ squad, lanes: '2', cap: '2' });
      expect(lanes.map(({ swimmers }) => swimmers.map(({ name, pace }) => [name, pace]))).toEqual([
        [
          ['Mara Quill', 6500],
          ['Bea Loxley', 6800],
        ],
        [['Ivo Tarn', 7250]],
      ]);
    }
  });

  test('gives each lane the send-off of its slowest, and everyone the rest that leaves', () => {
    const found = plan({ squad: 'Mara 1:05\nOona 1:06\nJun 1:25', lanes: '2', cap: '2' });
    expect(found.lanes.map(({ sendOff }) => sendOff)).toEqual([9000, 10500]);
    expect(squadTables(found)[0]).toMatchObject({
      caption: 'Lane 1, on 1:30, done at 14:41',
      rows: [
        { head: 'Mara', cells: ['1:05', '25'] },
        { head: 'Oona', cells: ['1:06', '24'] },
      ],
    });
    expect(found.finished).toBe(9 * 10500 + 8500);
    expect(found.sentence).toBe('3 swimmers in 2 lanes, on 1:30, 1:45.');
  });

  test('says where the lanes do not hold all, and names the line that has no pace', () => {
    expect(view({ what: 'squad', lanes: '1', cap: '4' }).errors['lanes']?.[0]).toMatch(
      /hold 4 swimmers, not 8/,
    );
    expect(view({ what: 'squad', squad: 'Mara 1:05\nIvo' }).errors['squad']?.[0]).toMatch(/^Ivo/);
  });
});

test('a rest or a gap below zero is wrong where it was typed', () => {
  expect(view({ what: 'lane', rest: '-5' }).errors).toEqual({
    rest: ['Rest wanted must be zero or more.'],
  });
  expect(view({ what: 'squad', stagger: '-5' }).errors).toEqual({
    stagger: ['Time between swimmers must be zero or more.'],
  });
});

test('comes back out of its address as it went in', () => {
  const fields = { ...saltmarsh, squad: 'Mara\t1:05,3\nIvo; 105→1:05.00', what: 'squad' };
  const query = addressOf(fields).split('?').slice(1).join('?');
  expect(readQuery(query, saltmarsh, shape)).toEqual({ fields, problems: [] });
});

test('whatever stands in the fields, it shows an answer or says why not', () => {
  const text = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 20 }),
    fc.constantFrom('', '100', '4', '1:05', '20', 'Mara 1:05\nIvo 1:08', '0', '1e9'),
  );
  const fields = fc.record(
    Object.fromEntries(
      Object.entries(shape).map(([name, choices]) => [
        name,
        choices === 'any' ? text : fc.constantFrom(...choices),
      ]),
    ),
  ) as fc.Arbitrary<SendOffFields>;
  fc.assert(
    fc.property(fields, (given) => {
      const found = viewOf(given);
      const answer = found.lane ?? found.plan;
      expect(answer !== null).toBe(Object.keys(found.errors).length === 0);
      expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined/);
    }),
  );
});
