import { formatSet, type PlannedSet, parseSet, type SetItem, safeParseSet } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything } from '../../generators.js';
import { refusal } from '../../refusal.js';
import { isSound } from '../../sound.js';

/** The only item of a text, without its place. */
const itemIn = (text: string): Omit<SetItem, 'source'> => {
  const [block] = parseSet(text).blocks;
  expect(block?.items).toHaveLength(1);
  const { source: _, ...item } = block!.items[0]!;
  return item;
};
const notesIn = (text: string) =>
  parseSet(text).notes.map(({ code, position }) => [code, position]);

describe('parseSet', () => {
  const reps = (count: number, ...distances: number[]) => ({
    type: 'swims',
    reps: count,
    distances,
  });

  test.each<[string, object]>([
    ['10x100', reps(10, 100)],
    ['10 x 100', reps(10, 100)],
    ['10×100', reps(10, 100)],
    ['10*100', reps(10, 100)],
    ['10 X 100', reps(10, 100)],
    ['10 100s', reps(10, 100)],
    ['5 x 200s', reps(5, 200)],
    ['１０ｘ１００', reps(10, 100)],
    ['400', reps(1, 400)],
    ['100-200-300-200-100', reps(1, 100, 200, 300, 200, 100)],
    ['2 x 100–200', reps(2, 100, 200)],
  ])('%j: reps and distances', (text, item) => {
    expect(itemIn(text)).toEqual(item);
  });

  test.each([
    ['on 1:30', 9000],
    ['@ 1:30', 9000],
    ['@1:30', 9000],
    ['at 1:30', 9000],
    ['/ 1:30', 9000],
    ['on :45', 4500],
    [':45', 4500],
    ['on :60', 6000],
    ['on 60', 6000],
    ['on 90', 9000],
    ['on the 4:30', 27_000],
    ['on 1:07.5', 6750],
    ['on 1.30', 9000],
    ["on 1'30", 9000],
    ['on 2 min', 12_000],
  ])('4 x 50 %s: the send-off', (text, time) => {
    expect(itemIn(`4 x 50 ${text}`)).toEqual({ ...reps(4, 50), sendOffs: [time] });
  });

  test('two lanes have two send-offs', () => {
    expect(itemIn('4 x 50 on :45 / :55')).toMatchObject({ sendOffs: [4500, 5500] });
  });

  test.each([
    ['r10', 1000],
    ['r 10', 1000],
    ['r:10', 1000],
    [':10r', 1000],
    ['10s rest', 1000],
    ['10 sec rest', 1000],
    ['rest 10', 1000],
    [':15 RI', 1500],
    ['15 RI', 1500],
    ['w/ :30 RI', 3000],
    ['with 30 rest', 3000],
    ['@ :20 rest', 2000],
    ['on :20 rest', 2000],
    ['20" rest', 2000],
    ["20'' rest", 2000],
    ["1' rest", 6000],
    ['r 1:30', 9000],
    ['r 90', 9000],
    ['r 0', 0],
  ])('4 x 50 %s: the rest', (text, rest) => {
    expect(itemIn(`4 x 50 ${text}`)).toEqual({ ...reps(4, 50), rest });
  });

  test.each<[string, object]>([
    ['free', { stroke: 'free' }],
    ['fr', { stroke: 'free' }],
    ['FS', { stroke: 'free' }],
    ['back', { stroke: 'back' }],
    ['bk', { stroke: 'back' }],
    ['breast', { stroke: 'breast' }],
    ['br', { stroke: 'breast' }],
    ['fly', { stroke: 'fly' }],
    ['IM', { stroke: 'medley' }],
    ['choice', { stroke: 'choice' }],
    ['kick', { kind: 'kick' }],
    ['K', { kind: 'kick' }],
    ['pull', { kind: 'pull' }],
    ['P', { kind: 'pull' }],
    ['drill', { kind: 'drill' }],
    ['swim', { kind: 'swim' }],
    ['easy', { effort: 'easy' }],
    ['ez', { effort: 'easy' }],
    ['moderate', { effort: 'moderate' }],
    ['fast', { effort: 'fast' }],
    ['sprint', { effort: 'sprint' }],
    ['fly kick fast', { stroke: 'fly', kind: 'kick', effort: 'fast' }],
    ['build', { within: 'build' }],
    ['negative split', { within: 'negative' }],
    ['NS', { within: 'negative' }],
    ['neg', { within: 'negative' }],
    ['(-)', { within: 'negative' }],
    ['(–)', { within: 'negative' }],
    ['even', { within: 'even' }],
    ['even pace', { within: 'even' }],
    ['build by 25', { within: 'build', by: 25 }],
    ['descend', { over: { shape: 'descend' } }],
    ['desc 1-4', { over: { shape: 'descend', pattern: [1, 4] } }],
    ['descend 1-2-3-4', { over: { shape: 'descend', pattern: [1, 4] } }],
    ['d1-4', { over: { shape: 'descend', pattern: [1, 4] } }],
    ['1→5', { over: { shape: 'descend', pattern: [1, 5] } }],
    ['1->5', { over: { shape: 'descend', pattern: [1, 5] } }],
    ['desc 2-2-2-2', { over: { shape: 'descend', pattern: [2, 2, 2, 2] } }],
    ['ascend', { over: { shape: 'ascend' } }],
    ['best average', { over: { shape: 'best average' } }],
    ['hold best avg', { over: { shape: 'best average' } }],
    ['hold 1:12', { target: 7200 }],
    ['in 1:05', { target: 6500 }],
    ['hold 1.05,3', { target: 6530 }],
    ['hold 65,3', { target: 6530 }],
    ['in 1:20 on 1:30', { target: 8000, sendOffs: [9000] }],
    ['odd kick even swim', { odd: { kind: 'kick' }, even: { kind: 'swim' } }],
    [
      'odds fly easy / evens free',
      { odd: { stroke: 'fly', effort: 'easy' }, even: { stroke: 'free' } },
    ],
    ['even reps: back', { even: { stroke: 'back' } }],
    ['odds build evens even split', { odd: { within: 'build' }, even: { within: 'even' } }],
    [
      'free, easy,\non 1:30\ndescend',
      { stroke: 'free', effort: 'easy', sendOffs: [9000], over: { shape: 'descend' } },
    ],
  ])('8 x 100 %s', (text, details) => {
    expect(itemIn(`8 x 100 ${text}`)).toEqual({ ...reps(8, 100), ...details });
  });

  const four = { ...reps(4, 50), sendOffs: [4500] };
  const easy = { ...reps(1, 50), effort: 'easy' };
  test.each<[string, object]>([
    ['2x(4x50 on :45, 50 ez)', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['2 x [4x50 on :45 + 50 ez]', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['2 x {\n4x50 on :45\n50 ez\n}', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['2 rounds of: 4x50 on :45, 50 ez', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['2 rounds of:\n4x50 on :45\n50 ez', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['2 rounds (4x50 on :45; 50 ez)', { type: 'rounds', rounds: 2, items: [four, easy] }],
    ['(4x50 on :45 + 50 ez) r 60', { type: 'rounds', rounds: 1, items: [four, easy], rest: 6000 }],
    [
      '2 x (2 x (4x50 on :45))',
      { type: 'rounds', rounds: 2, items: [{ type: 'rounds', rounds: 2, items: [four] }] },
    ],
    [
      'broken 400: 4 x 100 r 10',
      { type: 'rounds', rounds: 1, broken: 400, items: [{ ...reps(4, 100), rest: 1000 }] },
    ],
    [
      '3 x broken 200 on 4:00: 100 r 10 + 100',
      {
        type: 'rounds',
        rounds: 3,
        broken: 200,
        sendOffs: [24_000],
        items: [{ ...reps(1, 100), rest: 1000 }, reps(1, 100)],
      },
    ],
  ])('%j: groups', (text, item) => {
    expect(
      JSON.parse(
        JSON.stringify(itemIn(text), (key, value) => (key === 'source' ? undefined : value)),
      ),
    ).toEqual(item);
  });

  test('rounds without brackets end with their line, or with an empty one', () => {
    const items = (text: string) => parseSet(text).blocks[0]!.items.map(({ type }) => type);
    expect(items('2 rounds: 4 x 50, 50\n100')).toEqual(['rounds', 'swims']);
    expect(items('2 rounds:\n4 x 50\n# a comment is no empty line\n50\n\n100')).toEqual([
      'rounds',
      'swims',
    ]);
  });

  test('a broken swim ends where its pieces add up to it', () => {
    const { items } = parseSet('broken 200: 100 r 10 + 100 + 200 easy').blocks[0]!;
    expect(items.map(({ type }) => type)).toEqual(['rounds', 'swims']);
  });

  test.each([
    ['WU', 'warm-up'],
    ['warm-up:', 'warm-up'],
    ['Warm up', 'warm-up'],
    ['Pre-set', 'pre-set'],
    ['preset:', 'pre-set'],
    ['Pre set', 'pre-set'],
    ['MS', 'main set'],
    ['main set -', 'main set'],
    ['CD', 'cool-down'],
    ['WD', 'cool-down'],
    ['cool-down', 'cool-down'],
    ['Warm down', 'cool-down'],
    ['warm-down', 'cool-down'],
  ])('%s is a heading', (heading, name) => {
    for (const between of [' ', '\n', '\n\n']) {
      expect(parseSet(`${heading}${between}400`).blocks).toMatchObject([
        { name, items: [{ distances: [400] }] },
      ]);
    }
  });

  test('blocks follow each other, the first with or without a heading', () => {
    const { blocks } = parseSet('400 choice\nMS 10x100 on 1:30\n8 x 50 r 15\n\nCD 200 ez');
    expect(blocks.map(({ name, items }) => [name, items.length])).toEqual([
      [null, 1],
      ['main set', 2],
      ['cool-down', 1],
    ]);
  });

  test('a total is checked against its block or everything so far, and not kept', () => {
    expect(parseSet('4 x 100\n= 400\nMS\n8 x 100\ntotal: 800 m\n').blocks).toHaveLength(2);
    expect(parseSet('4 x 100\nMS\n8 x 100\ntotal 1200').blocks).toHaveLength(2);
    expect(parseSet('4 x 100\n= 400\n200').blocks).toMatchObject([{ items: [{}, {}] }]);
    expect(refusal(() => parseSet('4 x 100\n= 500'))).toMatchObject({
      code: 'set-contradiction',
      position: 8,
    });
  });

  test('a comment stays with the set on its line, else with the next, else with the last', () => {
    const text = '# lanes 1 to 4\n400 // choice\n#\n3 x (100 # with fins\n+ 50) # twice\n# the end';
    expect(parseSet(text).blocks[0]!.items.map(({ comment }) => comment)).toEqual([
      'lanes 1 to 4; choice',
      'with fins; twice; the end',
    ]);
  });

  test('each part has its place in the text', () => {
    const text = ' 200 ez\r\n2 x (4 x 50 on :45 , 100) # over\n';
    const { blocks } = parseSet(text);
    const placed = (part: { source?: { start: number; end: number } }) =>
      text.slice(part.source!.start, part.source!.end);
    const [first, rounds] = blocks[0]!.items;
    expect(placed(blocks[0]!)).toBe('200 ez\r\n2 x (4 x 50 on :45 , 100)');
    expect(placed(first!)).toBe('200 ez');
    expect(placed(rounds!)).toBe('2 x (4 x 50 on :45 , 100)');
    expect(rounds!.type === 'rounds' && rounds!.items.map(placed)).toEqual([
      '4 x 50 on :45',
      '100',
    ]);
  });

  test.each([
    ['4 x 100 @ 1:30', [['at-is-send-off', 8]]],
    ['4 x 100 1:30', [['time-is-send-off', 8]]],
    ['4 x 100 @ :30 rest', [['on-is-rest', 8]]],
    ['4 x 100 descend 1-4', [['descend-is-faster', 8]]],
    ['4 x 100 NS', [['ns-is-negative-split', 8]]],
    ['4 x 100 even', [['even-is-pace', 8]]],
    ['2 rounds of: 100', [['rounds-to-line-end', 0]]],
    ['2 rounds of:\n100', [['rounds-to-empty-line', 0]]],
    ['2 x (4 x 50 r 10) r 60', [['round-rest-added', 18]]],
    ['4 x 100m', [['unit-left-out', 7]]],
    ['4 x 25 # no breath-holding', [['breath-holding', 7]]],
    ['4 x 100 @ 1:30\n4 x 50 @ 1:00', [['at-is-send-off', 8]]],
    ['4 x 100 free even split on 1:30', []],
  ])('%j says which reading it took', (text, notes) => {
    expect(notesIn(text)).toEqual(notes);
  });

  test.each<[string, string, number, RegExp]>([
    ['', 'set-unreadable', 0, /text ends here; expected a set/],
    ['# nothing', 'set-unreadable', 9, /text ends here; expected a set/],
    ['on 1:30', 'set-unreadable', 0, /"on" cannot be read here; expected a set/],
    ['4 x', 'set-unreadable', 3, /expected a distance or a bracket/],
    ['4 x 100 +', 'set-unreadable', 9, /expected a set/],
    ['4 x 100, , 200', 'set-unreadable', 9, /expected a set/],
    ['4 x 100 quickly', 'set-unreadable', 8, /"quickly" cannot be read here; expected a detail/],
    ['10 100', 'set-unreadable', 3, /"100" cannot be read here/],
    ['2 x 3 x 100', 'set-unreadable', 6, /"x" cannot be read here/],
    ['4 x 100 on soon', 'set-unreadable', 11, /"soon" cannot be read here; expected a time/],
    ['4 x 100 on', 'set-unreadable', 10, /expected a time/],
    ['4 x 100 on 1:75', 'set-unreadable', 11, /"1:75" is no time/],
    [
      '4 x 100 with fins',
      'set-unreadable',
      13,
      /"fins" cannot be read here; expected what it is swum with/,
    ],
    ['4 x 100 d free', 'set-unreadable', 10, /expected reps/],
    ['4 x 100 best effort', 'set-unreadable', 13, /expected average/],
    ['4 x 100 odds', 'set-unreadable', 12, /expected how those reps are swum/],
    ['2 x (4 x 100', 'set-unreadable', 12, /expected a detail, "\+" or "\)"/],
    ['2 x (4 x 100]', 'set-unreadable', 12, /expected a detail, "\+" or "\)"/],
    ['4 x 100)', 'set-unreadable', 7, /"\)" cannot be read here/],
    ['broken 400 4 x 100', 'set-unreadable', 11, /":" and the pieces/],
    ['WU\nMS 400', 'set-unreadable', 3, /expected a set/],
    ['(((((((((((((((((((((100', 'set-unreadable', 21, /at most 20 brackets deep/],
    ['10 x 100 on :30', 'set-ambiguous', 9, /start every :30.*or :30 of rest; write "r 30"/],
    ['10 x 100 :30', 'set-ambiguous', 9, /:30 of rest/],
    ['3 x (4 x 100 r 10) on 1:30', 'set-ambiguous', 19, /1:30 of rest/],
    ['400 hold 1:10', 'set-ambiguous', 4, /time of the whole 400.*or a pace/],
    ['8 x 50 even easy', 'set-ambiguous', 7, /even pace or the even reps/],
    ['4x50 on :45,50 ez', 'set-ambiguous', 8, /one time, or a time and the next set/],
    ['8 x 50 on 105', 'time-ambiguous', 10, /1:05\.00 or 1:45\.00/],
    ['8 x 50 r 100', 'time-ambiguous', 9, /1:00\.00 or 10\.00/],
    ['4 x 100 on 1:30 r 10', 'set-contradiction', 16, /send-off and a rest/],
    ['4 x 100 on 1:30 on 1:40', 'set-contradiction', 16, /"on 1:40" says again/],
    ['4 x 100 free easy back', 'set-contradiction', 18, /"back" says again/],
    ['4 x 100 descend 1-8', 'set-contradiction', 8, /is for 8 reps, but there are 4/],
    ['8 x 50 desc 2-2', 'set-contradiction', 7, /is for 4 reps, but there are 8/],
    ['4 x 100 descend 4-2', 'set-contradiction', 8, /no pattern of reps/],
    ['100-200 hold 1:30', 'set-contradiction', 8, /time of one distance/],
    ['broken 400: 3 x 100 r 10', 'set-contradiction', 0, /add up to 300.*is 400/],
    ['broken 400: 3 x 150 r 10', 'set-contradiction', 0, /add up to 450.*is 400/],
    ['4 x 100m + 4 x 50yd', 'set-contradiction', 17, /Metres and yards/],
    ['0 x 100', 'out-of-range', 0, /whole number from 1/],
    ['4 x 0', 'out-of-range', 4, /whole number from 1/],
    ['4 x 100001', 'out-of-range', 4, /to 100000/],
    ['4 x 33.3', 'out-of-range', 4, /whole number/],
    ['100 x (101 x 25)', 'too-many-reps', 0, /10100 swims long/],
    ['9999 x 25\n2 x 25', 'too-many-reps', 10, /10001 swims long/],
    ['8 x 25 hypoxic', 'breath-holding', 7, /blackout/],
    ['8 x 25 underwater', 'breath-holding', 7, /blackout/],
    ['8 x 25 under water kick', 'breath-holding', 7, /blackout/],
    ['8 x 25 no breath', 'breath-holding', 7, /blackout/],
    ['8 x 25 breath-hold', 'breath-holding', 7, /blackout/],
    ['8 x 25 hold breath', 'breath-holding', 12, /blackout/],
  ])('%j is refused with %s at %i', (text, code, position, message) => {
    const error = refusal(() => parseSet(text));
    expect([error.code, error.position]).toEqual([code, position]);
    expect(error.message).toMatch(message);
    expect(error.input).toBe(text);
  });

  test('a send-off is refused exactly below 50 s per 100', () => {
    expect(itemIn('100 on :50')).toMatchObject({ sendOffs: [5000] });
    expect(refusal(() => parseSet('100 on :49.99')).code).toBe('set-ambiguous');
    expect(itemIn('2 x (50 + 50 r 10) on :50')).toMatchObject({ sendOffs: [5000] });
    expect(itemIn('100 hold 43')).toMatchObject({ target: 4300 });
    expect(refusal(() => parseSet('100 hold 42.99')).code).toBe('set-ambiguous');
  });

  test('a text that is too long, or none, is refused', () => {
    expect(refusal(() => parseSet('1'.repeat(100_001))).code).toBe('out-of-range');
    expect(refusal(() => parseSet(undefined as never)).code).toBe('wrong-shape');
  });

  test('whatever it is given, a set comes out or a PacingError', () => {
    fc.assert(
      fc.property(fc.oneof(anything, fc.string()), (value) => {
        expect(isSound(() => parseSet(value as string))).toBe(true);
      }),
    );
  });
});

describe('safeParseSet', () => {
  test('hands back what parseSet gives or throws', () => {
    expect(safeParseSet('4 x 100')).toEqual({ ok: true, value: parseSet('4 x 100') });
    expect(safeParseSet('4 x')).toMatchObject({
      ok: false,
      error: { code: 'set-unreadable', position: 3 },
    });
  });
});

test('a set survives JSON', () => {
  const set = parseSet('WU 400\nMS 3 x (4 x 100 @ 1:30 odds kick + 200 easy) # hard');
  const again: PlannedSet = JSON.parse(JSON.stringify(set));
  expect(again).toEqual(set);
  expect(formatSet(again)).toBe(formatSet(set));
});
