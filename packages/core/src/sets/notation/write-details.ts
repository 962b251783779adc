import { choiceOf, countOf, fieldsOf, itemsOf, numberOf } from '../../check.js';
import { PacingError } from '../../errors.js';
import { type Hundredths, timeOf } from '../../time/hundredths.js';
import { LONGEST_DISTANCE, LONGEST_TIME, MOST_REPS } from './limits.js';
import { MANNER, valuesOf, wordFor } from './words.js';
import { writeSendOff, writeTime } from './write-time.js';

type Fields = Record<string, unknown>;

/** A list with something in it, out of plain data. */
export function someOf(value: unknown, what: string): readonly unknown[] {
  const items = itemsOf(value, what);
  if (items.length > 0) return items;
  throw new PacingError('wrong-shape', `${what} must not be empty; add at least one.`, value);
}

/** A rest out of plain data, in hundredths of a second; it may be none. */
export function restOf(value: unknown): Hundredths {
  return countOf(value, 'The rest', 0, LONGEST_TIME) as Hundredths;
}

/** All that is said of a part, in the order it is written; each field is checked on the way. */
export function writeDetails(fields: Fields): readonly string[] {
  const { over, target, sendOffs, rest, odd, even } = fields;
  const words = [...writeManner(fields)];
  const add = (field: unknown, write: (value: unknown) => string) => {
    if (field !== undefined) words.push(write(field));
  };
  add(over, writeShape);
  add(target, (time) => `hold ${writeTime(timeFrom(time, 'The target'))}`);
  add(sendOffs, (times) => {
    const each = someOf(times, 'The send-offs').map((time) => timeFrom(time, 'A send-off'));
    return `on ${each.map(writeSendOff).join(' / ')}`;
  });
  add(rest, (time) => `r ${writeTime(restOf(time))}`);
  add(odd, (manner) => writeParity('odd', manner));
  add(even, (manner) => writeParity('even', manner));
  return words;
}

function writeManner(fields: Fields): readonly string[] {
  const words = MANNER.filter((role) => fields[role] !== undefined).map((role) =>
    wordFor(role, choiceOf<string>(fields[role], valuesOf(role), `The ${role}`)),
  );
  const { by } = fields;
  return by === undefined ? words : [...words, `by ${countOf(by, 'By', 1, LONGEST_DISTANCE)}`];
}

function writeParity(parity: 'odd' | 'even', value: unknown): string {
  const manner = writeManner(fieldsOf(value, `How the ${parity} reps are swum`));
  return [wordFor('parity', parity), ...someOf(manner, `What is said of the ${parity} reps`)].join(
    ' ',
  );
}

function writeShape(value: unknown): string {
  const { shape, pattern = [] } = fieldsOf(value, 'The shape over the reps');
  const name = choiceOf<string>(shape, valuesOf('over'), 'The shape over the reps');
  const reps = itemsOf(pattern, 'The pattern').map((n) => countOf(n, 'A rep', 1, MOST_REPS));
  return [name, ...(reps.length > 0 ? [reps.join('-')] : [])].join(' ');
}

function timeFrom(value: unknown, what: string): Hundredths {
  return numberOf(timeOf(value, what), what, { max: LONGEST_TIME }) as Hundredths;
}
