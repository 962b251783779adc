import { formatTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brokenFour } from '~/calculators/broken-swim/example';
import { addressOf, type BrokenFields, shape, viewOf } from '~/calculators/broken-swim/model';
import { readQuery } from '~/ui/address';

const view = (change: Partial<BrokenFields> = {}) =>
  viewOf({ ...brokenFour, ...change } as BrokenFields);

/** What each method says, by name: its time, or why it has none. */
const answers = (change: Partial<BrokenFields> = {}) =>
  Object.fromEntries(
    view(change).result?.methods.map(({ name, estimate, lacks }) => [
      name,
      estimate ? formatTime(estimate.time) : lacks,
    ]) ?? [],
  );

describe('projecting a broken swim', () => {
  test('reads the example by every method, and averages none', () => {
    const { result } = view();
    expect(result?.race.swum).toBe(24840);
    expect(answers()).toEqual({
      'Twice the second halves': '4:13.60',
      'Published rest data': '4:18.86',
      'Reserve, linear': '4:38.40',
      'Reserve, differential': '4:25.35',
      'Reserve, integral': '4:15.12',
    });
    expect(result?.sentence).toBe(
      'Twice the second halves give 4:13.60 for 400 m; 4:08.40 was swum, rests left out.',
    );
    expect(result?.cautions[0]).toMatch(/^5 methods answer, from 4:13.60 to 4:38.40/);
  });

  test('every method that answers brings its assumptions and cautions', () => {
    for (const { estimate } of view().result?.methods ?? []) {
      expect(estimate?.assumptions.length).toBeGreaterThan(0);
      expect(estimate?.cautions.length).toBeGreaterThan(0);
    }
  });

  test('a method that cannot answer says what it would take', () => {
    const bare = answers({ reserve: '', tau: '', rest: '30' });
    expect(bare['Published rest data']).toMatch(/measured for 10 s/);
    expect(bare['Reserve, linear']).toBe('Needs the swimmer’s reserve.');
    expect(answers({ tau: '' })['Reserve, integral']).toBe('Needs the swimmer’s time constant.');
    const unknown = answers({ known: 'nothing' });
    expect(unknown['Published rest data']).toBe('Needs the rest between the pieces.');
    expect(unknown['Reserve, linear']).toMatch(/give a send-off or a rest/);
    expect(view({ reserve: '', tau: '', rest: '30' }).result?.cautions[0]).toMatch(/^One method/);
  });

  test('where one piece stands alone there is no rest to read', () => {
    expect(answers({ pieces: '30.1 31.4' })['Published rest data']).toBe(
      'Needs two pieces or more.',
    );
  });

  test('a longer race is read from the same pieces, but not from a reserve', () => {
    const longer = answers({ race: '800' });
    expect(longer['Twice the second halves']).toBe('8:27.20');
    expect(longer['Reserve, linear']).toMatch(/answers for the 400 m swum/);
  });

  test('gives targets for the next one', () => {
    const { targets } = view().result ?? {};
    expect(targets?.honest).toEqual({ halfway: 3170, wall: 6340, difference: 0 });
    expect(targets?.goOut).toBe(130);
  });

  test('takes yards, send-offs and the watch at halfway', () => {
    const yards = view({
      pool: '25yd',
      kind: 'running',
      pieces: '27 56\n28 57\n28 58\n28 58',
      known: 'sendOff',
      rest: '1:08',
    });
    expect(yards.result?.sentence).toMatch(/for 400 yd/);
    expect(yards.result?.reading.rest).toBe(1075);
  });

  test('whole pieces have no second half, and it is said what would do', () => {
    const { errors, result } = view({ pieces: '1:01\n1:02' });
    expect(errors.pieces.join()).toMatch(/time the halves/);
    expect(result).toBeNull();
  });

  test('each field says what it needs, and nothing typed is lost', () => {
    expect(view({ pieces: ' ' }).errors.pieces[0]).toMatch(/^Enter the pieces/);
    expect(view({ pieces: '30 31\n30 soon' }).errors.pieces.join()).toMatch(/Piece 2, time 2/);
    expect(view({ distance: '' }).errors.distance).toBe('Enter the piece distance.');
    expect(view({ race: 'far' }).errors.race).toMatch(/^Race distance must be a number/);
    expect(view({ reserve: '0' }).errors.reserve).toMatch(/1 or more/);
    expect(view({ tau: 'x' }).errors.tau).toMatch(/must be a number/);
    expect(view({ pool: 'other', length: 'long' }).errors.length).toMatch(/must be a number/);
  });

  test('comes back out of its address as it went in', () => {
    const fields = { ...brokenFour, pieces: '30,1\t105→1:05.00', tau: '' };
    const query = addressOf(fields).split('?').slice(1).join('?');
    expect(readQuery(query, brokenFour, shape)).toEqual({ fields, problems: [] });
  });

  test('whatever stands in the fields, there is a view and no NaN in it', () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('', '30.1 31.4', '30 31\n30 31', '0', '−1', '1e9', '105', '100', '18', '300'),
    );
    const fields = fc.record({
      pool: fc.constantFrom('25m', '25yd', 'other'),
      length: text,
      unit: fc.constantFrom('m', 'yd'),
      distance: text,
      kind: fc.constantFrom('halves', 'running'),
      pieces: text,
      known: fc.constantFrom('sendOff', 'rest', 'total', 'nothing'),
      rest: text,
      race: text,
      reserve: text,
      tau: text,
    });
    fc.assert(
      fc.property(fields, (all) => {
        const { result, errors } = viewOf(all as BrokenFields);
        const wrong = Object.values(errors).some((error) => error !== null && error.length > 0);
        expect(result === null).toBe(wrong);
        expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
