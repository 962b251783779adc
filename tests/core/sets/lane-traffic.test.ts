import { type CirclingLane, hundredths, laneTraffic } from 'backhalf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anything, lap, nearly } from '../../generators.js';
import { isSound } from '../../sound.js';

const lane = (sendOff: number, swims: number[], stagger?: number): CirclingLane => ({
  sendOff: hundredths(sendOff),
  swims: swims.map(hundredths),
  ...(stagger !== undefined && { stagger: hundredths(stagger) }),
});
const codes = (...of: Parameters<typeof lane>) => laneTraffic(lane(...of)).map(({ code }) => code);

describe('laneTraffic', () => {
  test('is quiet where the lane runs freely', () => {
    expect(codes(9000, [6700, 6800, 6900, 7000])).toEqual([]);
  });

  test('sees a swimmer who cannot make the send-off', () => {
    expect(codes(9000, [6700, 9000])).toEqual([]);
    expect(codes(9000, [6700, 9001])).toEqual(['missed-send-off']);
    expect(laneTraffic(lane(9000, [6700, 9100]))[0]?.message).toContain('1 of 2');
  });

  test('sees the first come back before, or just as, the last has left', () => {
    expect(codes(9000, Array(4).fill(1500), 500)).toEqual(['lane-crowded', 'wall-clash']);
    expect(codes(9000, Array(4).fill(1701), 500)).toEqual([]);
  });

  test('sees a send-off too short for all to leave', () => {
    expect(codes(3000, Array(6).fill(2700), 500)).toEqual([]);
    expect(codes(2999, Array(6).fill(2700), 500)).toContain('lane-crowded');
  });

  test('sees one leave as another comes in, across the send-off too', () => {
    // The fifth is in at 1:31, and the first has left again at 1:30.
    expect(codes(9000, [6700, 6800, 6900, 7000, 7100])).toEqual(['wall-clash']);
    expect(laneTraffic(lane(9000, [6700, 6800, 6900, 7000, 7100]))[0]?.message).toContain(
      'Swimmer 1 leaves within 2 s of swimmer 5 coming in',
    );
    // Two seconds clear is clear, on either side.
    expect(codes(9000, [6700, 8300])).toEqual([]);
    expect(codes(9000, [6700, 8301])).toEqual(['wall-clash']);
    expect(codes(9000, [6700, 8700])).toEqual([]);
    expect(codes(9000, [6700, 8699])).toEqual(['wall-clash']);
  });

  test('one who comes in and leaves again is not in one’s own way', () => {
    expect(codes(6700, [6700])).toEqual([]);
  });

  test('sees one catch the swimmer ahead', () => {
    expect(codes(9000, [6999, 6500])).toEqual([]);
    expect(codes(9000, [7000, 6500])).toEqual(['catches-up']);
    expect(laneTraffic(lane(9000, [6000, 7000, 6400]))[0]?.message).toContain('Swimmer 3');
  });

  test('finds a clash exactly where two events, counted out, come close', () => {
    const small = fc.integer({ min: 1000, max: 9000 });
    fc.assert(
      fc.property(
        fc.integer({ min: 6000, max: 9000 }),
        fc.array(small, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 0, max: 1000 }),
        (sendOff, swims, stagger) => {
          const reps = [0, 1, 2, 3, 4, 5];
          const clash = swims.some((swim, i) =>
            swims.some((_, j) =>
              reps.some((k) => {
                const arrival = 2 * sendOff + i * stagger + swim;
                return i !== j && Math.abs(arrival - (k * sendOff + j * stagger)) < 200;
              }),
            ),
          );
          expect(codes(sendOff, swims, stagger).includes('wall-clash')).toBe(clash);
        },
      ),
      { numRuns: 500 },
    );
  });

  test('answers anything with cautions or a PacingError', () => {
    const given = fc.record({
      sendOff: nearly(lap),
      swims: nearly(fc.array(nearly(lap), { maxLength: 5 })),
      stagger: anything,
    });
    fc.assert(fc.property(nearly(given), (value) => isSound(() => laneTraffic(value as never))));
  });
});
