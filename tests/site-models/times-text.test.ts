import { formatTime, hundredths } from 'backhalf';
import { describe, expect, test } from 'vitest';
import { readTimeText, withChoice } from '~/ui/time-text';
import { chooseTime, readTimesText, saidTimes } from '~/ui/times-text';

const laps = { label: 'Lap', every: 50, running: false };
const running = { label: 'Time', every: 50, running: true };
const written = (text: string, options = laps) =>
  readTimesText(text, options).times.map(({ time }) => time && formatTime(time));

describe('a time field', () => {
  test('asks for a time in the words of its label', () => {
    expect(readTimeText('  ', 'Time of the swim').error).toBe('Enter the time of the swim.');
  });

  test('names every reading, likeliest first, and chooses none', () => {
    const { time, choices, error } = readTimeText('105', 'Goal');
    expect(time).toBeNull();
    expect(choices.map((choice) => formatTime(choice))).toEqual([
      '1:05.00',
      '10.50',
      '0:01.05',
      '1:45.00',
    ]);
    expect(error).toBe('“105” could be 1:05.00, 10.50, 0:01.05 or 1:45.00. Choose one.');
  });

  test('keeps what was typed beside what was chosen', () => {
    const held = withChoice('105', hundredths(6500));
    expect(readTimeText(held, 'Goal')).toMatchObject({ typed: '105', time: 6500, error: null });
    expect(readTimeText(held, 'Goal').choices).toHaveLength(4);
  });

  test('takes an arrow that chose nothing for typed text', () => {
    expect(readTimeText('105→soon', 'Goal')).toMatchObject({ typed: '105→soon', time: null });
  });

  test('lets a window choose between readings, but not refuse the only one', () => {
    const within = { from: hundredths(2000), to: hundredths(20000) };
    expect(readTimeText('3350', 'Lap', within).time).toBe(3350);
    expect(readTimeText('9:59.00', 'Lap', within).time).toBe(59900);
  });
});

describe('a list of times', () => {
  test.each([
    ['a column', '31.42\n34.10\n34.65'],
    ['side by side', '31.42 34.10 34.65'],
    ['tabs', '31.42\t34.10\t34.65'],
    ['semicolons', '31.42; 34.10; 34.65'],
    ['commas and blanks', '31.42, 34.10, 34.65'],
    ['commas alone', '31.42,34.10,34.65'],
    ['decimal commas', '31,42\r\n34,10\r\n34,65'],
    ['decimal commas between semicolons', '31,42;34,10;34,65'],
    ['digits alone', '3142 3410 3465'],
    ['rows of laps', '31.42 34.10\n34.65'],
    ['a heading', 'Lap time\n31.42\n34.10\n34.65'],
    ['numbered rows', '1\t31.42\n2\t34.10\n3\t34.65'],
    ['distances beside', '50\t31.42\n100\t34.10\n150\t34.65'],
    ['distances with their unit', '50m 31.42\n100m 34.10\n150m 34.65'],
    ['a file of comma-separated values', 'distance,time\n50,31.42\n100,34.10\n150,34.65'],
    ['words beside', 'Lap\t1\t31.42\nLap\t2\t34.10\nLap\t3\t34.65'],
    ['laps with running times', '50\t31.42\t31.42\n100\t34.10\t1:05.52\n150\t34.65\t1:40.17'],
  ])('reads %s', (_, text) => {
    expect(written(text)).toEqual(['31.42', '34.10', '34.65']);
  });

  test('reads running times, also beside their laps', () => {
    const sums = ['31.42', '1:05.52', '1:40.17'];
    expect(written('31.42\n1:05,52\n1.40,17', running)).toEqual(sums);
    expect(written('31.42 31.42\n34.10 1:05.52\n34.65 1:40.17', running)).toEqual(sums);
  });

  test('says what it passed over', () => {
    expect(readTimesText('Lap\tTime\n1\t31.42\n2\t34.10', laps).leftOut).toEqual([
      'The first row was read as headings.',
      'Columns of numbers, distances or words were left out.',
    ]);
    expect(readTimesText('31.42 34.10', laps).leftOut).toEqual([]);
  });

  test('names the lap that does not read and keeps the others', () => {
    const { times } = readTimesText('31.42\nsoon\n34.65', laps);
    expect(times.map(({ time }) => time)).toEqual([3142, null, 3465]);
    expect(times[1]?.error).toMatch(/^Lap 2: "soon"/);
  });

  test('asks where a lap has two sensible readings, and writes the choice into the text', () => {
    const text = '31.42\n105\n34.65';
    const unclear = readTimesText(text, laps).times[1];
    expect(unclear?.choices).toEqual([6500, 10500]);
    const once = chooseTime(text, unclear!, hundredths(10500));
    expect(once).toBe('31.42\n105→1:45.00\n34.65');
    const again = chooseTime(once, readTimesText(once, laps).times[1]!, hundredths(6500));
    expect(again).toBe('31.42\n105→1:05.00\n34.65');
    expect(written(again)).toEqual(['31.42', '1:05.00', '34.65']);
  });

  test('says back how it read the list, once all of it reads', () => {
    expect(saidTimes(readTimesText('3142 34,1', laps).times, 'lap')).toBe(
      'Read as 2 laps: 31.42 · 34.10.',
    );
    expect(saidTimes(readTimesText('31.42 soon', laps).times, 'lap')).toBeNull();
  });
});
