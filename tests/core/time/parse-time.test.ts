import { parseTime, safeParseTime } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { refusal } from '../../refusal.js';

describe('one reading', () => {
  test.each([
    ['33.5', 3350],
    ['33.50', 3350],
    ['33,5', 3350],
    ['0.83', 83],
    ['5.75', 575],
    ['65.3', 6530],
    ['1:05', 6500],
    ['1:05.3', 6530],
    ['1:05,30', 6530],
    ['1.05,3', 6530],
    ['1.05.30', 6530],
    ['1,05,30', 6530],
    ['01:05.30', 6530],
    [':45', 4500],
    [':45.3', 4530],
    ['16:46.6', 100_660],
    ['1646.6', 100_660],
    ['120:00', 720_000],
    ['1:02:03', 372_300],
    ['1:02:03.45', 372_345],
    ['1:02:03,4', 372_340],
    ['1.02.03.45', 372_345],
    ['45', 4500],
    ['5', 500],
    ['0', 0],
    ['3375', 3375],
    ['104405', 64_405],
    ['1020345', 372_345],
  ])('%s', (text, time) => {
    expect(parseTime(text)).toBe(time);
  });
});

describe('signs and blanks as people type and paste them', () => {
  test.each([
    ['  33.5\t', 3350],
    ['1 : 05.3', 6530],
    ['33.5 s', 3350],
    ['33.5s', 3350],
    ['33.5 SEC', 3350],
    ['1\'05"3', 6530],
    ["1'05''3", 6530],
    ['1′05″30', 6530],
    ['1’05”3', 6530],
    ['1´05', 6500],
    ['１：０５．３', 6530],
    ['\u200e1:05.3\u200f', 6530],
    ['\ufeff33.50\u00a0', 3350],
    ['−0.83', -83],
    ['-0.83', -83],
    ['–0,83', -83],
    ['+1.05', 105],
    ['− 1:05.3', -6530],
    ['-0', 0],
  ])('%j', (text, time) => {
    expect(parseTime(text)).toBe(time);
  });
});

describe('more than one reading', () => {
  test.each([
    ['105', '"105" could be 1:05.00, 10.50, 0:01.05 or 1:45.00; write it with colon and decimals.'],
    ['1.05', '"1.05" could be 1:05.00 or 0:01.05; write it with colon and decimals.'],
    ['3350', '"3350" could be 33.50 or 33:50.00; write it with colon and decimals.'],
    [
      '-105',
      '"-105" could be −1:05.00, −10.50, −1.05 or −1:45.00; write it with colon and decimals.',
    ],
  ])('%s is asked back', (text, message) => {
    expect(refusal(() => parseTime(text))).toMatchObject({
      code: 'time-ambiguous',
      message,
      input: text,
    });
  });
});

describe('what cannot be read, and where reading fails', () => {
  const HOW = 'write one like 33.50 or 1:05.3.';
  test.each([
    ['', 0, `A time is missing; ${HOW}`],
    [' \u200b ', 0, `A time is missing; ${HOW}`],
    ['NT', 0, '"NT" says that there is no time; leave it out.'],
    ['  dq ', 2, '"  dq " says that there is no time; leave it out.'],
    ['ANT', 0, `"ANT" is no time; ${HOW}`],
    ['NTX', 0, `"NTX" is no time; ${HOW}`],
    ['soon', 0, `"soon" is no time; ${HOW}`],
    ['33.5x', 4, `"33.5x" is no time; ${HOW}`],
    ['33s.5x', 2, `"33s.5x" is no time; ${HOW}`],
    ['12345678s', 0, `"12345678s" is no time; ${HOW}`],
    ['12345678 sec  ', 0, `"12345678 sec  " is no time; ${HOW}`],
    ['x', 0, `"x" is no time; ${HOW}`],
    ['s', 0, `"s" is no time; ${HOW}`],
    ['3²', 1, `"3²" is no time; ${HOW}`],
    ['1:75', 2, '"1:75" has 75 where at most 59 can stand; write it again.'],
    ['1:60', 2, '"1:60" has 60 where at most 59 can stand; write it again.'],
    ['1’75', 2, '"1’75" has 75 where at most 59 can stand; write it again.'],
    ['1:75 sec', 2, '"1:75 sec" has 75 where at most 59 can stand; write it again.'],
    ['1:02:75.3', 5, '"1:02:75.3" has 75 where at most 59 can stand; write it again.'],
    ['1.75.30', 2, '"1.75.30" has 75 where at most 59 can stand; write it again.'],
    ['1:5', 2, '"1:5" needs two digits after each colon, like 1:05.'],
    ['1:5.75', 2, '"1:5.75" needs two digits after each colon, like 1:05.'],
    ['1:055', 2, '"1:055" needs two digits after each colon, like 1:05.'],
    ['1:', 2, '"1:" needs two digits after each colon, like 1:05.'],
    ['1:05.300', 7, '"1:05.300" has a third decimal, which official timing does not use; drop it.'],
    ['33,507', 5, '"33,507" has a third decimal, which official timing does not use; drop it.'],
    ['33"507', 5, '"33"507" has a third decimal, which official timing does not use; drop it.'],
    ['31 32 33', 2, `"31 32 33" has a blank between two digits; ${HOW}`],
    ['1  05', 1, `"1  05" has a blank between two digits; ${HOW}`],
    ['  12345678', 2, `"  12345678" is no time; ${HOW}`],
    ['5-3', 0, `"5-3" is no time; ${HOW}`],
    ['1.05:30', 0, `"1.05:30" is no time; ${HOW}`],
    ['1:02.03.45', 0, `"1:02.03.45" is no time; ${HOW}`],
    ['x'.padEnd(64), 0, `"${'x'.padEnd(40)}…" is no time; ${HOW}`],
    ['1:05'.padEnd(65), 64, `A time has at most 64 characters, not 65; ${HOW}`],
  ])('%j at %d', (text, position, message) => {
    expect(refusal(() => parseTime(text))).toMatchObject({
      code: 'time-unreadable',
      position,
      message,
      input: text,
    });
  });

  test('the first slip is told, whichever it is', () => {
    expect(refusal(() => parseTime('1:75x')).position).toBe(2);
    expect(refusal(() => parseTime('x1:75')).position).toBe(0);
  });

  test('a text of ten million characters is refused at once', () => {
    const start = performance.now();
    expect(refusal(() => parseTime(':'.repeat(1e7))).message.length).toBeLessThan(100);
    expect(performance.now() - start).toBeLessThan(400);
  });

  test.each([65.3, null, undefined, ['1:05'], new String('1:05')])('%j is no text', (value) => {
    expect(refusal(() => parseTime(value as never))).toMatchObject({
      code: 'wrong-shape',
      message: expect.stringMatching(/^A time must be text/),
    });
  });
});

test('safeParseTime gives what parseTime gives or throws', () => {
  expect(safeParseTime('1:05.3')).toEqual({ ok: true, value: 6530 });
  expect(safeParseTime('1:75')).toEqual({ ok: false, error: refusal(() => parseTime('1:75')) });
});
