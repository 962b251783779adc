import { describe, expect, test } from 'vitest';
import { chooseTime } from '~/ui/times-text';
import { readTrials } from '~/ui/trials-text';

const swims = (text: string) => readTrials(text, 'Trial').swims;

describe('trials, one a line', () => {
  test.each([
    ['blanks', '200 2:19.6\n400 4:53.2'],
    ['tabs', '200\t2:19.6\r\n400\t4:53.2'],
    ['commas', '200,2:19.6\n400, 4:53.2'],
    ['semicolons and decimal commas', '200;2:19,6\n400; 4:53,2'],
    ['commas and decimal commas', '200,2:19,6\n400,4:53,2'],
    ['points between minutes and seconds', '200 2.19,6\n400 4.53,2'],
    ['units and words', '200 m free 2:19.6\n400m 4:53.2 (pm)'],
    ['headings and empty lines', 'Distance;Time\n\n200;2:19.6\n\n400;4:53.2\n'],
  ])('reads %s', (_, text) => {
    expect(readTrials(text, 'Trial').errors).toEqual([]);
    expect(swims(text)).toEqual([
      { distance: 200, time: 13_960 },
      { distance: 400, time: 29_320 },
    ]);
  });

  test.each(['soon 4:53.2', '4:53.2', '4:53.2 400', '31.5 33.5', '400', '400 4 53', '1,500 15:48'])(
    'a line like “%s” is named, and what would do',
    (line) => {
      const { errors } = readTrials(`200 2:19.6\n${line}`, 'Trial');
      expect(errors).toEqual(['Trial 2 must be a distance and a time, like 400 4:53.2.']);
    },
  );

  test('a time that cannot be read is named by its trial', () => {
    expect(readTrials('200 2:75', 'Race').errors.join()).toMatch(/^Race 1: /);
  });

  test('a time with two readings is asked for, where it stands, and the answer holds', () => {
    const text = '100 1:05.0\n200  139.6';
    const { text: reading, errors } = readTrials(text, 'Trial');
    expect(errors).toEqual(['Trial 2: “139.6” could be 1:39.60 or 2:19.60. Choose one.']);
    const [, unclear] = reading.times;
    const chosen = chooseTime(text, unclear!, unclear!.choices[1]!);
    expect(readTrials(chosen, 'Trial').errors).toEqual([]);
    expect(swims(chosen)[1]).toEqual({ distance: 200, time: 13_960 });
  });

  test('an endless paste is cut, and that is said', () => {
    const { errors, swims: read } = readTrials('400 4:53.2\n'.repeat(60), 'Trial');
    expect(read).toHaveLength(50);
    expect(errors).toEqual(['These are 60 lines; 50 are read at most.']);
  });
});
