import type { SetItem, SetSwims } from '../planned-set.js';
import type { Draft } from './draft.js';
import { flawOf } from './flaws.js';
import { distanceOf, strideOf } from './measure.js';
import { readDetails } from './read-details.js';
import type { Reader } from './reader.js';

/** How far a list of sets goes: past line ends, up to an empty line, or not past a line end. */
type Reach = 'all' | 'paragraph' | 'line';

/** Steps over what stands between two sets: a line end, or one of `+ , ;`. */
export function takeSeparator(r: Reader, reach: Reach = 'all'): boolean {
  return r.try(() => {
    const ends = reach === 'line' ? 0 : r.takeLines();
    if (ends > 1 && reach === 'paragraph') return false;
    if (r.takeSign('+,;') !== undefined) {
      r.takeLines();
      return true;
    }
    const closes = ')]}'.includes(r.text); // or the text ends
    return ends > 0 && !closes && !r.is('heading') && !r.is('total');
  });
}

/** Reads one part of a set: swims, rounds in brackets or without, a broken swim. */
export function readItem(r: Reader, reach: Reach = 'all'): SetItem {
  const start = r.place;
  const counted = /^\d/.test(r.text);
  const count = counted ? r.needCount('') : 1;
  if (counted && r.take('times') === undefined) {
    if (r.take('rounds') !== undefined) return openRounds(r, start, count);
    return isCounted(r)
      ? swims(r, start, count, r.needCount('a distance'))
      : swims(r, start, 1, count);
  }
  const bracket = r.takeSign('([{');
  if (bracket !== undefined) return bracketed(r, start, count, bracket);
  if (r.take('broken') !== undefined) return broken(r, start, count, reach);
  if (!counted) throw r.unexpected('a set, such as 4 x 100');
  return swims(r, start, count, r.needCount('a distance or a bracket'));
}

/** `10 100s`; but `400 10s rest` is one swim and its rest. */
function isCounted(r: Reader): boolean {
  const rest = r.is('rest', 2) && !r.isNumber(3) && !r.isSign(':', 3);
  return r.isNumber() && r.token(1).text === 's' && !rest;
}

function swims(r: Reader, start: number, reps: number, distance: number): SetItem {
  const distances = [distance];
  if (r.text === 's') r.next();
  while (r.takeSign('-') !== undefined) distances.push(r.needCount('a distance'));
  takeUnit(r);
  const bare: SetSwims = { type: 'swims', reps, distances };
  return withDetails(r, start, bare, readDetails(r, strideOf(bare)));
}

/** A unit is read and left out: distances are in the pool's own. Two of them are a slip. */
function takeUnit(r: Reader): void {
  const { place } = r;
  const unit = r.take('unit');
  if (unit === undefined) return;
  r.note('unit-left-out', place);
  r.unit ??= unit;
  if (r.unit === unit) return;
  const message = 'Metres and yards stand in one set; write all of it in one unit.';
  throw r.error('set-contradiction', message, place);
}

function bracketed(r: Reader, start: number, rounds: number, opening: string): SetItem {
  const closing = ')]}'['([{'.indexOf(opening)] as string;
  const items = r.inside(() => {
    r.takeLines();
    return readItems(r, 'all');
  });
  r.takeLines();
  if (r.takeSign(closing) === undefined) throw r.unexpected(`a detail, "+" or "${closing}"`);
  const bare = { type: 'rounds', rounds, items } as const;
  return withDetails(r, start, bare, readDetails(r, strideOf(bare)));
}

/** `3 rounds of:`, with brackets or without. */
function openRounds(r: Reader, start: number, rounds: number): SetItem {
  r.take('of');
  r.takeSign(':');
  const bracket = r.takeSign('([{');
  if (bracket !== undefined) return bracketed(r, start, rounds, bracket);
  const below = r.takeLines() > 0;
  r.note(below ? 'rounds-to-empty-line' : 'rounds-to-line-end', start);
  const items = r.inside(() => readItems(r, below ? 'paragraph' : 'line'));
  return withDetails(r, start, { type: 'rounds', rounds, items }, { said: {}, places: {} });
}

/** `broken 400: 4 x 100 r 10`: its pieces end where they add up to it. */
function broken(r: Reader, start: number, rounds: number, reach: Reach): SetItem {
  const distance = r.needCount('the distance of the broken swim');
  const draft = readDetails(r, distance);
  if (r.takeSign(':') === undefined) throw r.unexpected('a detail, or ":" and the pieces');
  r.takeLines();
  let left = distance;
  const items: SetItem[] = [];
  r.inside(() => {
    do {
      const piece = readItem(r, reach);
      items.push(piece);
      left -= distanceOf(piece);
    } while (left > 0 && takeSeparator(r, reach));
  });
  return withDetails(r, start, { type: 'rounds', rounds, items, broken: distance }, draft);
}

function readItems(r: Reader, reach: Reach): readonly SetItem[] {
  const items = [];
  do items.push(readItem(r, reach));
  while (takeSeparator(r, reach));
  return items;
}

function withDetails(r: Reader, start: number, bare: SetItem, { said, places }: Draft): SetItem {
  const item = { ...bare, ...said, source: r.spanFrom(start) };
  const rest = places['rest'];
  if (item.type === 'rounds' && rest !== undefined) r.note('round-rest-added', rest);
  const flaw = flawOf(item);
  if (flaw === null) return item;
  throw r.error(flaw.code, flaw.message, places[flaw.about ?? ''] ?? start);
}
