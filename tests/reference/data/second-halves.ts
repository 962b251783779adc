import {
  compareHalves,
  formatTime,
  halvesOf,
  hundredths,
  parseTime,
  projectFromSet,
  readSet,
  SCM,
  splitsFromLaps,
} from 'backhalf';
import type { Reference } from '../reference.js';

interface Read {
  readonly verdict: string;
  readonly repPace: string;
  readonly honestPace: string;
  readonly wholeReps: string;
  readonly race: string;
  /** Whether a race of 16:46.6, such as followed the first set, lies in the stated range. */
  readonly holdsTheRace: boolean;
}

/** Twenty 100s on 1:30, each timed at halfway, and the 1500 they promise. */
export const secondHalves: Reference<readonly [string, string], Read> = {
  key: 'second-halves',
  title: 'Twice the second half, over 1500 m',
  source: 'Common practice, no source; so is the race of about 16:46.6 after the first set',
  standing: 'common practice',
  rows: [
    {
      place: '31.5 out, 33.5 back',
      input: ['31.5', '33.5'],
      published: {
        verdict: 'positive',
        repPace: '1:05.00',
        honestPace: '1:07.00',
        wholeReps: '16:15.00',
        race: '16:45.00',
        holdsTheRace: true,
      },
    },
    {
      place: '32.3 out, 32.7 back',
      input: ['32.3', '32.7'],
      published: {
        verdict: 'even',
        repPace: '1:05.00',
        honestPace: '1:05.40',
        wholeReps: '16:15.00',
        race: '16:21.00',
        holdsTheRace: false,
      },
    },
  ],
  compute: (halves) => {
    const rep = splitsFromLaps(50, halves.map(parseTime));
    const reps = Array.from({ length: 20 }, () => rep);
    const set = { pool: SCM, repDistance: 100, reps, sendOff: parseTime('1:30') };
    const { repPace, honestPace, evenWithin } = readSet(set);
    const { time, wholeReps, range } = projectFromSet(set, { distance: 1500 });
    const raced = parseTime('16:46.6');
    return {
      verdict: compareHalves(halvesOf(rep), { evenWithin }).verdict,
      repPace: formatTime(repPace),
      honestPace: formatTime(honestPace ?? hundredths(0)),
      wholeReps: formatTime(wholeReps),
      race: formatTime(time),
      holdsTheRace: range !== null && range.low <= raced && raced <= range.high,
    };
  },
};
