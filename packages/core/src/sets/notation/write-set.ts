import { choiceOf, countOf, fieldsOf, textOf } from '../../check.js';
import { PacingError } from '../../errors.js';
import { sumOf } from '../../statistics.js';
import { brokenFlaw } from './flaws.js';
import { DEEPEST, LONGEST_DISTANCE, LONGEST_TEXT, MOST_REPS } from './limits.js';
import { valuesOf, wordFor } from './words.js';
import { someOf, writeDetails } from './write-details.js';

/** A part as written, and how far it is in the pool's unit. */
interface Written {
  readonly text: string;
  readonly distance: number;
}

/** Takes note of what is written, so that a tree that holds itself is refused and not written for ever. */
type Spend = (text: string) => string;

/** Writes a set out of plain data, each field checked on the way. What they say together is checked by reading it. */
export function writeSet(value: unknown): string {
  let length = 0;
  const spend: Spend = (text) => {
    length += text.length;
    return short(text, length);
  };
  const short = (text: string, all: number): string => {
    if (all <= LONGEST_TEXT) return text;
    const message = `The set takes more than ${LONGEST_TEXT} characters to write; write it in parts.`;
    throw new PacingError('out-of-range', message, value);
  };
  const blocks = someOf(fieldsOf(value, 'The set')['blocks'], 'The blocks');
  const text = blocks.map((block, i) => writeBlock(block, i === 0, spend)).join('\n\n');
  return short(text, text.length);
}

function writeBlock(value: unknown, first: boolean, spend: Spend): string {
  const { name, items } = fieldsOf(value, 'A block');
  const lines = someOf(items, 'The items').map((item) => writeItem(item, 0, spend).text);
  if (first && name === null) return lines.join('\n');
  const heading = choiceOf<string>(name, valuesOf('heading'), 'The name of a block');
  return [wordFor('heading', heading), ...lines].join('\n');
}

function writeItem(value: unknown, depth: number, spend: Spend): Written {
  if (depth > DEEPEST) {
    const message = `A set goes at most ${DEEPEST} brackets deep; use fewer.`;
    throw new PacingError('wrong-shape', message, value);
  }
  const fields = fieldsOf(value, 'An item');
  const type = choiceOf(fields['type'], ['swims', 'rounds'], 'The type of an item');
  const count = countOf(
    type === 'swims' ? fields['reps'] : fields['rounds'],
    type === 'swims' ? 'The reps' : 'The rounds',
    1,
    MOST_REPS,
  );
  const once = type === 'swims' ? writeSwims(fields, spend) : writeRounds(fields, depth, spend);
  return {
    text:
      (count === 1 ? '' : `${count} x `) +
      once.text +
      writeComment(fields['comment'], depth, spend),
    distance: count * once.distance,
  };
}

function writeSwims(fields: Record<string, unknown>, spend: Spend): Written {
  const distances = someOf(fields['distances'], 'The distances').map(distanceOf);
  const text = spend([distances.join('-'), ...writeDetails(fields)].join(' '));
  return { text, distance: sumOf(distances) };
}

function writeRounds(fields: Record<string, unknown>, depth: number, spend: Spend): Written {
  const { items, broken } = fields;
  const parts = someOf(items, 'The items').map((item) => writeItem(item, depth + 1, spend));
  const distance = sumOf(parts.map((part) => part.distance));
  const inner = parts.map(({ text }) => text).join(' + ');
  const details = writeDetails(fields)
    .map((detail) => spend(` ${detail}`))
    .join('');
  if (broken === undefined) return { text: `(${inner})${details}`, distance };
  const flaw = brokenFlaw(distanceOf(broken), distance);
  if (flaw !== null) throw new PacingError(flaw.code, flaw.message, broken);
  return { text: `broken ${broken}${details}: ${inner}`, distance };
}

function distanceOf(value: unknown): number {
  return countOf(value, 'A distance', 1, LONGEST_DISTANCE);
}

function writeComment(value: unknown, depth: number, spend: Spend): string {
  if (value === undefined) return '';
  const comment = textOf(value, 'The comment').trim();
  if (depth === 0 && /^[^\r\n]+$/.test(comment)) return spend(` # ${comment}`);
  const message = 'A comment must be one line, on an item of a block and not inside rounds.';
  throw new PacingError('wrong-shape', message, value);
}
