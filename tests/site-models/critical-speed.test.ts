import { type Estimate, formatTime } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandOf } from '~/calculators/critical-speed/band';
import { oonaThroughSet, oonaTrials } from '~/calculators/critical-speed/example';
import { addressOf, type CriticalFields, shape } from '~/calculators/critical-speed/fields';
import { viewOf } from '~/calculators/critical-speed/model';
import { notesOf } from '~/calculators/critical-speed/notes';
import type { Answer } from '~/calculators/critical-speed/races';
import { raceRows, stepRows, trialRows, verdictRows } from '~/calculators/critical-speed/rows';
import { throughSet } from '~/calculators/critical-speed/through-set';
import { awaited } from '~/calculators/critical-speed/use-through-set';
import { readQuery } from '~/ui/address';

const view = (change: Partial<CriticalFields> = {}) =>
  viewOf({ ...oonaThroughSet, ...change } as CriticalFields, throughSet);
const result = (change: Partial<CriticalFields> = {}) => {
  const found = view(change).result;
  if (found === null) throw new Error(JSON.stringify(view(change).errors));
  return found;
};
const timeOf = (answer: Answer | undefined) => formatTime((answer as Estimate).time);

describe('fitting critical speed', () => {
  test('the example: pace, reserve, and the race by both methods', () => {
    const { sentence, races } = result();
    expect(sentence).toBe(
      'Critical pace 1:16.78 per 100 m with a reserve of 22 m, and 18:54.99 for 1500 m.',
    );
    expect(races.map(({ distance }) => distance)).toEqual([400, 800, 1500]);
    expect(timeOf(races[2]?.settles)).toBe('18:54.99');
    expect(timeOf(races[2]?.fades)).toBe('19:28.48');
  });

  test('a distance of one’s own stands among the usual ones', () => {
    expect(result({ race: '1000' }).races.map(({ distance }) => distance)).toEqual([
      400, 800, 1000, 1500,
    ]);
  });

  test('every race has a range with three trials, and one that takes in the estimate', () => {
    for (const { settles, fades } of result().races) {
      for (const answer of [settles, fades] as Estimate[]) {
        expect(answer.range?.low).toBeLessThanOrEqual(answer.time);
        expect(answer.range?.high).toBeGreaterThanOrEqual(answer.time);
      }
    }
  });

  test('two trials fit without intervals, and the page says what a third would do', () => {
    const two = result({ trials: '400 4:49.6\n800 9:57.8' });
    expect(two.model.intervals).toBeNull();
    expect(two.cautions.join()).toMatch(/third one/);
    expect(bandOf(two.model, 1500)).toEqual([]);
  });

  test('the band widens beyond the trials and holds the line', () => {
    const { model } = result();
    const band = bandOf(model, 1500);
    expect(band.length).toBeGreaterThan(10);
    const widths = band.map(({ low, high }) => high - low);
    expect(widths.at(-1)).toBeGreaterThan(Math.min(...widths));
    for (const { metres, low, high } of band) {
      const time = (100 * (metres - model.reserve)) / model.speed;
      expect(low).toBeLessThanOrEqual(time + 1);
      expect(high).toBeGreaterThanOrEqual(time - 1);
    }
  });

  test.each([
    ['200 2:17.4\n400 4:30', /400 m was swum no slower than the 200 m/],
    ['200 2:17.4\n200 2:18.0', /Two trials are of 200 m/],
    ['200 2:17.4', /two trials or more/],
    ['', /^Enter two trials or more/],
    ['200 2:17.4\nsoon', /two trials or more/],
  ])('refuses %j with a reason', (trials, reason) => {
    const { errors, result: found } = view({ trials });
    expect(errors.trials.join()).toMatch(reason);
    expect(found).toBeNull();
  });

  test('yards are told in yards, refusals too, and fitted in metres', () => {
    const yards = { pool: '25yd', trials: '200 2:05\n500 5:40\n1000 11:40', race: '1650', set: '' };
    expect(result(yards).races.map(({ distance }) => distance)).toEqual([500, 1000, 1650]);
    expect(trialRows(result(yards)).columns[0]).toBe('Trial, yd');
    expect(result(yards).model.trials[0]?.distance).toBeCloseTo(182.88, 6);
    const { errors } = view({ ...yards, trials: '200 2:05\n500 5:00' });
    expect(errors.trials).toEqual([
      'The 500 yd was swum no slower than the 200 yd; check both times or leave one out.',
    ]);
  });

  test('where one method has no answer, the other still has and the reason is told', () => {
    const odd = result({ trials: '200 2:00\n400 10:00', set: '' });
    expect(odd.races.every(({ fades }) => typeof fades === 'string')).toBe(true);
    expect(raceRows(odd, 'fades').rows[0]?.cells[0]).toBe('–');
    expect(raceRows(odd, 'settles').rows[2]?.cells[0]).not.toBe('–');
    expect(notesOf(odd)[1]?.lacks[0]).toMatch(/^400 m: .*exponent/);
  });
});

describe('the reserve through a set', () => {
  const verdicts = (change: Partial<CriticalFields> = {}) =>
    result(change).forms?.map(({ name, trace }) => [
      name,
      typeof trace === 'string' ? null : trace.verdict,
    ]);

  test('all three forms side by side, which disagree', () => {
    expect(verdicts()).toEqual([
      ['Linear', 'comfortable'],
      ['Differential', 'borderline'],
      ['Integral', 'beyond'],
    ]);
    expect(verdictRows(result()).rows[2]?.cells).toEqual(['beyond', '–', 'swim 6']);
    const steps = stepRows(result());
    expect(steps.rows).toHaveLength(12);
    expect(steps.rows[5]?.cells[2]).toBe('runs out');
    expect(steps.rows[6]?.cells[2]).toBe('–');
  });

  test('the integral form waits for its time constant, the others do not', () => {
    expect(verdicts({ tau: '' })).toEqual([
      ['Linear', 'comfortable'],
      ['Differential', 'borderline'],
      ['Integral', null],
    ]);
    expect(notesOf(result({ tau: '' }))[2]?.lacks.join()).toMatch(/time constant/);
  });

  test('the page opens without a set; till its reader is there, a set has rows that say nothing yet', () => {
    expect(viewOf(oonaTrials, throughSet).result?.forms).toBeNull();
    const waiting = viewOf(oonaThroughSet, awaited).result;
    const rows = waiting ? verdictRows(waiting).rows : [];
    expect(rows.map(({ head }) => head)).toEqual(
      verdictRows(result()).rows.map(({ head }) => head),
    );
    expect(rows.every(({ cells }) => cells[0] === '…')).toBe(true);
    expect(waiting ? stepRows(waiting).rows : null).toEqual([]);
    expect(waiting ? notesOf(waiting) : []).toHaveLength(2);
  });

  test('a swim without a target takes the pace that is typed', () => {
    expect(view({ set: '8 x 100 on 1:30' }).errors.set).toMatch(/no known time/);
    expect(verdicts({ set: '8 x 100 on 1:30', pace: '1:15' })?.[0]).toEqual([
      'Linear',
      'comfortable',
    ]);
  });

  test('what is wrong with the set leaves the fit standing', () => {
    for (const set of ['8 x', '10 x 100 quickly', '8 x 110 in 1:20 on 1:40']) {
      const { errors, result: found } = view({ set });
      expect(errors.set?.length).toBeGreaterThan(10);
      expect(found?.forms).toBeNull();
    }
    expect(view({ set: ' ' }).errors.set).toBeNull();
  });
});

test('each field says what it needs', () => {
  expect(view({ race: 'far' }).errors.race).toMatch(/^Race distance must be a number/);
  expect(view({ pace: 'x' }).errors.pace).not.toBeNull();
  expect(view({ tau: '0' }).errors.tau).toMatch(/1 or more/);
  expect(view({ pool: 'other', length: 'long' }).errors.length).toMatch(/must be a number/);
});

test('comes back out of its address as it went in', () => {
  const fields = { ...oonaTrials, trials: '200;2:17,4\n400\t4:49.6', tau: '' };
  const query = addressOf(fields).split('?').slice(1).join('?');
  expect(readQuery(query, oonaTrials, shape)).toEqual({ fields, problems: [] });
});

test('whatever stands in the fields, there is a view and no NaN in it', () => {
  const text = fc.oneof(
    fc.string(),
    fc.constantFrom('', '0', '−1', '1e9', '1500', '1:15', '300', '10 x 100 in 1:11 on 1:25'),
  );
  const swim = fc
    .tuple(fc.integer({ min: 10, max: 99_999 }), fc.integer({ min: 1, max: 999_999 }))
    .map(([distance, time]) => `${distance} ${time / 100}`);
  const trials = fc.oneof(
    text,
    fc.array(swim, { maxLength: 5 }).map((lines) => lines.join('\n')),
  );
  const fields = fc.record({
    pool: fc.constantFrom('25m', '25yd', 'other'),
    length: text,
    unit: fc.constantFrom('m', 'yd'),
    trials,
    race: text,
    set: text,
    pace: text,
    tau: text,
  });
  fc.assert(
    fc.property(fields, (all) => {
      const { result: found, errors } = viewOf(all as CriticalFields, throughSet);
      if (found === null) {
        expect([errors.length, errors.race, ...errors.trials].some(Boolean)).toBe(true);
        return;
      }
      const shown = [trialRows(found), raceRows(found, 'fades'), verdictRows(found)];
      expect(JSON.stringify([shown, notesOf(found), found.sentence])).not.toMatch(
        /NaN|Infinity|undefined/,
      );
    }),
  );
});
