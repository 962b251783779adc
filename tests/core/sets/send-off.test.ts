import { fastestSendOff, hundredths, parseTime, restOn, sendOffFor } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lap, nearly } from '../../generators.js';
import { codeOf, refusal } from '../../refusal.js';
import { isSound } from '../../sound.js';

const rest = fc.integer({ min: 0, max: 12_000 }).map(hundredths);
const step = fc.constantFrom(100, 250, 500, 1000, 1500).map(hundredths);
const at = parseTime;

describe('restOn', () => {
  test('is what the send-off leaves', () => {
    expect(restOn(at('1:30.00'), at('1:07.00'))).toBe(2300);
  });

  test('is below zero for a missed send-off', () => {
    expect(restOn(at('1:05.00'), at('1:07.25'))).toBe(-225);
  });

  test('refuses a time that is none', () => {
    expect(codeOf(() => restOn(hundredths(0), at('1:07.00')))).toBe('not-a-time');
    expect(refusal(() => restOn(at('1:07.00'), hundredths(-1))).message).toContain('The swim');
  });

  test('answers anything with a time or a PacingError', () => {
    fc.assert(fc.property(nearly(lap), nearly(lap), (a, b) => isSound(() => restOn(a, b))));
  });
});

describe('sendOffFor', () => {
  test('rounds up to a step, so that nobody rests less than wanted', () => {
    fc.assert(
      fc.property(lap, rest, step, (swim, wanted, by) => {
        const sendOff = sendOffFor(swim, { rest: wanted, step: by });
        expect(sendOff % by).toBe(0);
        expect(restOn(sendOff, swim)).toBeGreaterThanOrEqual(wanted);
        expect(restOn(sendOff, swim) - wanted).toBeLessThan(by);
      }),
    );
  });

  test('down gives at most the rest wanted, and nearest the closer of both', () => {
    fc.assert(
      fc.property(lap, rest, step, (swim, wanted, by) => {
        fc.pre(swim + wanted >= by);
        const to = (round: 'up' | 'down' | 'nearest') =>
          sendOffFor(swim, { rest: wanted, step: by, round });
        const exact = swim + wanted;
        expect(to('down')).toBeLessThanOrEqual(exact);
        expect(exact - to('down')).toBeLessThan(by);
        const off = (sendOff: number) => Math.abs(sendOff - exact);
        expect(off(to('nearest'))).toBe(Math.min(off(to('up')), off(to('down'))));
      }),
    );
  });

  test('a tie goes up', () => {
    const swim = hundredths(6250);
    expect(sendOffFor(swim, { rest: hundredths(0), round: 'nearest' })).toBe(6500);
  });

  test('steps of five seconds unless told', () => {
    expect(sendOffFor(at('1:01.00'), { rest: hundredths(0) })).toBe(6500);
    expect(sendOffFor(at('1:01.00'), { rest: hundredths(0), step: hundredths(1000) })).toBe(7000);
  });

  test.each([
    ['a rest below zero', { rest: hundredths(-1) }, 'out-of-range'],
    ['no rest', {}, 'not-a-time'],
    ['a step of nothing', { rest: hundredths(0), step: hundredths(0) }, 'not-a-time'],
    ['another way of rounding', { rest: hundredths(0), round: 'sideways' }, 'unknown-choice'],
    ['a rest that makes it too long', { rest: hundredths(2 ** 53 - 1) }, 'too-large'],
  ])('refuses %s', (_, options, code) => {
    expect(codeOf(() => sendOffFor(at('1:07.00'), options as never))).toBe(code);
  });

  test('refuses to round a short swim away', () => {
    const down = { rest: hundredths(0), round: 'down' } as const;
    const error = refusal(() => sendOffFor(hundredths(499), down));
    expect(error).toMatchObject({ code: 'out-of-range' });
    expect(error.message).toContain('choose a smaller step');
  });

  test('answers anything with a time or a PacingError', () => {
    const round = nearly(fc.constantFrom('up', 'down', 'nearest'));
    const options = fc.record({ rest: nearly(rest), step: nearly(step), round });
    fc.assert(
      fc.property(nearly(lap), nearly(options), (swim, given) =>
        isSound(() => sendOffFor(swim, given)),
      ),
    );
  });
});

describe('fastestSendOff', () => {
  test('is the first step the swim does not miss', () => {
    expect(fastestSendOff(at('1:07.00'), 100)).toBe(7000);
    expect(fastestSendOff(at('1:05.00'), 100)).toBe(6500);
    expect(fastestSendOff(at('1:05.01'), 100)).toBe(7000);
    expect(fastestSendOff(at('1:07.00'), 50, { step: hundredths(100) })).toBe(3400);
  });

  test('makes nothing of the hair a third of a hundred adds', () => {
    expect(fastestSendOff(at('1:00.00'), 100 / 3)).toBe(2000);
  });

  test('refuses a distance of nothing', () => {
    expect(codeOf(() => fastestSendOff(at('1:07.00'), 0))).toBe('out-of-range');
  });

  test('refuses a step that is no option, or no time', () => {
    const bare = hundredths(500) as never;
    expect(codeOf(() => fastestSendOff(at('1:07.00'), 100, bare))).toBe('wrong-shape');
    const none = { step: hundredths(0) };
    expect(codeOf(() => fastestSendOff(at('1:07.00'), 100, none))).toBe('not-a-time');
  });

  test('answers anything with a time or a PacingError', () => {
    fc.assert(
      fc.property(
        nearly(lap),
        nearly(fc.integer({ min: 1, max: 800 })),
        nearly(fc.record({ step: nearly(step) })),
        (p, d, o) => isSound(() => fastestSendOff(p, d, o)),
      ),
    );
  });
});
