import { sumOf } from '../../statistics.js';
import type { SetBlock, SetItem } from '../planned-set.js';
import { tooMany } from './flaws.js';
import { MOST_REPS } from './limits.js';
import { distanceOf, repsOf } from './measure.js';
import { readItem, takeSeparator } from './read-item.js';
import type { Reader } from './reader.js';

type Open = { -readonly [Field in keyof SetBlock]: SetBlock[Field] } & { items: SetItem[] };

/** Reads a text to its end: headings, and the sets under each. */
export function readBlocks(r: Reader): readonly SetBlock[] {
  const blocks: Open[] = [];
  let reps = 0;
  r.takeLines();
  do {
    const start = r.place;
    const name = readHeading(r);
    if (name !== null || blocks.length === 0) blocks.push({ name, items: [] });
    const block = blocks.at(-1) as Open; // there is one by now
    r.takeLines();
    do {
      const item = readItem(r);
      block.items.push(withComments(r, item));
      reps += repsOf(item);
      if (reps > MOST_REPS) throw r.error('too-many-reps', tooMany(reps), item.source?.start);
    } while (takeSeparator(r));
    block.source = r.spanFrom(block.source?.start ?? start);
    r.try(() => readTotal(r, blocks));
    if (r.takeLines() === 0 && r.text !== '' && !r.is('heading')) {
      throw r.unexpected('a detail, such as free, on 1:30 or r 15, or "+" and the next set');
    }
  } while (r.text !== '');

  const last = (blocks.at(-1) as Open).items; // every block has an item
  last.push(withComments(r, last.pop() as SetItem));
  return blocks;
}

function readHeading(r: Reader): SetBlock['name'] {
  const said = r.take('heading');
  if (said === undefined) return null;
  const down = r.token(r.text === '-' ? 1 : 0).text === 'down';
  if (r.is('part', 1)) r.takeSign('-');
  r.take('part');
  r.takeSign(':-');
  return down ? 'cool-down' : (said as SetBlock['name']);
}

/** Gives an item the comments met since the one before it; those at the end go to the last. */
function withComments(r: Reader, item: SetItem): SetItem {
  const comment = [item.comment, ...r.takeComments()].filter(Boolean).join('; ');
  return comment === '' ? item : { ...item, comment };
}

/** Checks a written total, `= 1200`, against the block above it, or against all of the text so far. */
function readTotal(r: Reader, blocks: readonly Open[]): boolean {
  r.takeLines();
  const { place } = r;
  if (r.take('total') === undefined) return false;
  r.takeSign(':=');
  const total = r.needCount('the total distance');
  r.take('unit');
  const distances = blocks.map(({ items }) => sumOf(items.map(distanceOf)));
  const swum = distances.at(-1);
  if (total === swum || total === sumOf(distances)) return true;
  const message = `The sets add up to ${swum}, but the total says ${total}; change one of them.`;
  throw r.error('set-contradiction', message, place);
}
