import type { SetNoteCode } from '../planned-set.js';

/** What each note says. */
export const NOTES: Readonly<Record<SetNoteCode, string>> = {
  'at-is-send-off': '"@" is read as a send-off: the time from one start to the next.',
  'time-is-send-off': 'A time on its own is read as a send-off; write "hold" before a target.',
  'on-is-rest': 'The word "rest" decides: this is read as rest, not as a send-off.',
  'descend-is-faster': 'Descend is read as each rep faster than the one before.',
  'ns-is-negative-split': 'NS is read as a negative split: the second half faster.',
  'even-is-pace': 'Even is read as an even pace; write "evens" for the even reps.',
  'rounds-to-line-end': 'The rounds are read up to the end of the line; brackets would say so.',
  'rounds-to-empty-line': 'The rounds are read up to the next empty line; brackets would say so.',
  'round-rest-added': "Rest after a round comes on top of its last rep's send-off or rest.",
  'unit-left-out': "The unit is left out: distances are in the pool's own.",
  'breath-holding':
    'A comment speaks of breath-holding, which can end in a blackout without warning: leave it out.',
};
