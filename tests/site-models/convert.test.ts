import { TURN_GAINS } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ivo } from '~/calculators/convert/example';
import { type ConvertFields, shape } from '~/calculators/convert/fields';
import { addressOf, viewOf } from '~/calculators/convert/model';
import { readQuery } from '~/ui/address';

const view = (changed: Partial<ConvertFields>) => viewOf({ ...ivo, ...changed } as ConvertFields);
const answer = (changed: Partial<ConvertFields>) => {
  const { answer: found, problems } = view(changed);
  expect(problems).toEqual({});
  return found!;
};

describe('converting between courses', () => {
  // US collegiate qualifying standards, seasons as named, quoted by news reports: the first is the
  // published example, the others are worked from the published factors.
  test.each([
    ['25m', '25yd', 'fly', 'W', '200', '1:50.87', '1:40.44', '2021–22'],
    ['50m', '25yd', 'free', 'M', '1500', '16:46.60', '16:21.43', '2023–24'],
    ['50m', '25yd', 'back', 'W', '100', '58.45', '50.44', '2023–24'],
    ['25m', '25yd', 'free', 'W', '400', '3:39.15', '4:12.67', '2021–22'],
    ['25yd', '50m', 'free', 'W', '50', '22.15', '25.15', '2023–24'],
  ])('%s to %s, %s %s %s %s is %s by the table of %s', (...row) => {
    const [fromPool, toPool, stroke, sex, distance, time, converted, season] = row;
    const pools = { 'from-pool': fromPool, 'to-pool': toPool };
    const found = answer({ ...pools, stroke, sex, distance, time, gain: 'none' });
    expect(found.headline.figure).toBe(converted);
    expect(found.headline.note).toBe(`by the collegiate table of ${season}`);
    expect(found.sources[0]?.source).toMatch(season);
  });

  test('shows both methods side by side where both apply, and no mean of them', () => {
    const found = answer({});
    const other = found.beside[0];
    expect(found.headline.note).toMatch(/table of 2023–24/);
    expect(other?.note).toMatch(/by turns at 0\.80 s, \d+\.\d\d faster/);
    const times = found.table?.rows.map(({ cells }) => cells[0]);
    expect(times).toContain(found.headline.figure);
    expect(times).toContain(other?.figure);
    expect(found.sentence).toBe(
      `16:51.40 for 1500 m in a 50 m pool is, for 1650 yd in a 25 yd pool, ${found.headline.figure} by the collegiate table of 2023–24 and ${other?.figure} by turns at 0.80 s.`,
    );
  });

  test('lays every published gain for the stroke beside the chosen one, each with its source', () => {
    const found = answer({ 'to-pool': '25m', gain: 'record-1500-women' });
    expect(found.table?.rows.map(({ head }) => head)).toEqual([
      'Club handbook',
      'Committee handbook',
      'Record 1500 men',
      'Record 1500 women',
    ]);
    for (const { source } of TURN_GAINS) {
      expect(found.sources.some((each) => each.source.startsWith(source))).toBe(true);
    }
  });

  test('takes a typed gain, in seconds, with a decimal comma too', () => {
    const own = { 'to-pool': '25m', gain: 'own', own: '0,6', time: '16:46.60' };
    expect(answer(own).headline.figure).toBe('16:28.60');
    expect(answer({ ...own, own: '0.6 s' }).headline.figure).toBe('16:28.60');
    expect(view({ ...own, own: '' }).problems).toEqual({ own: 'Enter the gain per turn.' });
  });

  test('asks for a gain where no table answers, and for another where the stroke has none', () => {
    expect(view({ 'to-pool': '25m', gain: 'none' }).problems['gain']).toMatch(/^No table/);
    expect(view({ stroke: 'back', gain: 'record-1500-men' }).problems['gain']).toMatch(
      /another stroke/,
    );
    expect(view({ what: 'pace', gain: 'none' }).problems['gain']).toMatch(/^Choose a gain/);
  });

  test('shows what studies measured between 25 m and 50 m', () => {
    const found = answer({ 'to-pool': '25m' });
    const range = found.beside.find(({ label }) => label.startsWith('Measured'));
    expect(range?.note).toMatch(/Wolfrum et al\. 2013/);
    expect(range?.figure).toMatch(/^\d+:\d\d\.\d\d – \d+:\d\d\.\d\d$/);
  });

  test('says what a converted time is for', () => {
    expect(answer({}).cautions.join(' ')).toMatch(/no federation counts it as swum/);
    expect(answer({}).cautions.join(' ')).toMatch(/try more than one gain/);
  });

  test('lays the time of the same points beside it, once both base times are there', () => {
    const metres = { 'to-pool': '25m', distance: '100', time: '52.80' };
    const found = answer({ ...metres, 'from-base': '46.91', 'to-base': '45.83' });
    const same = found.beside.find(({ label }) => label === 'Worth the same points');
    expect(same).toMatchObject({ figure: '51.57' });
    expect(same?.note).toMatch(/^701 points/); // 1000 × (46.91 / 52.80)³, the fraction dropped
    expect(view({ ...metres, 'from-base': '46.91' }).problems).toEqual({
      'to-base': 'Enter the base time in the new pool.',
    });
    expect(answer({ 'from-base': '14:30' }).beside.some(({ label }) => /points/.test(label))).toBe(
      false,
    );
  });

  test('converts a pace and a send-off by turns, the send-off rounded for the clock', () => {
    const metres = { 'to-pool': '25m', gain: 'own', own: '0.60' };
    expect(answer({ ...metres, what: 'pace', pace: '1:07' }).headline.figure).toBe('1:05.80');
    const yards = { ...metres, 'to-pool': '25yd', what: 'send-off', 'send-off': '1:40' };
    const found = answer({ ...yards, rep: '100', round: 'up' });
    expect(found.headline.figure).toBe('1:35.00');
    expect(found.beside[0]?.label).toBe('Before rounding');
    expect(answer({ ...yards, rep: '100', round: 'down' }).headline.figure).toBe('1:30.00');
    expect(view({ ...yards, rep: '110' }).problems['rep']).toMatch(/no whole number of lengths/);
  });

  test('converts a distance by the exact yard, and shows the walls on either side', () => {
    const yards = { what: 'distance', 'from-pool': '25yd', 'to-pool': '25m', stretch: '3000' };
    const found = answer(yards);
    expect(found.headline.figure).toBe('2743.2 m');
    expect(found.beside.map(({ figure }) => figure)).toEqual(['2725 m', '2750 m']);
    expect(view({ ...yards, 'to-pool': '25yd' }).problems['to-pool']).toMatch(/in yards/);
  });

  test('takes odd pools on either side', () => {
    const odd = { 'to-pool': 'other', 'to-length': '33 1/3', 'to-unit': 'm', gain: 'own' };
    expect(answer({ ...odd, distance: '400', time: '4:20' }).headline.label).toBe(
      '400 m in a 33.33 m pool',
    );
    expect(view({ ...odd, 'to-length': 'long' }).problems['to-length']).toMatch(/a number/);
    expect(view({ ...odd, distance: '250', time: '2:45' }).problems['distance']).toMatch(/whole/);
    expect(view({ 'to-pool': '50m' }).problems['to-pool']).toMatch(/the same/);
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...ivo, time: '1.651,4→16:51.40', gain: 'own', own: '0,7' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, ivo, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in the fields, it shows an answer or says why not', () => {
    const text = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.constantFrom('100', '50', '1500', '33 1/3', '0', '58.4', '16:46.6', '1:40', '0,6', '105'),
    );
    const fields = fc.record(
      Object.fromEntries(
        Object.entries(shape).map(([name, choices]) => [
          name,
          choices === 'any' ? text : fc.constantFrom(...choices),
        ]),
      ),
    ) as fc.Arbitrary<ConvertFields>;
    fc.assert(
      fc.property(fields, (given) => {
        const { answer: found, problems } = viewOf(given);
        expect(found !== null).toBe(Object.keys(problems).length === 0);
        expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|undefined/);
        for (const name of Object.keys(problems)) expect(Object.keys(shape)).toContain(name);
      }),
    );
  });
});
