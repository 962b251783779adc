import { show } from '../../show.js';
import type { RepsShape } from '../planned-set.js';
import { type Draft, say } from './draft.js';
import { fastestTarget, shortestSendOff } from './limits.js';
import { readManner, readParity } from './read-manner.js';
import { needTime, readingOf, startOrRest, type WrittenTime } from './read-time.js';
import type { Reader } from './reader.js';

/** Reads all that is said of a part; `distance` is what its send-off or target is for. */
export function readDetails(r: Reader, distance: number): Draft {
  const draft: Draft = { said: {}, places: {} };
  const one = () => readDetail(r, draft, distance);
  // A detail may stand behind a comma or on the next line, if it can be nothing else.
  const next = () => (r.takeSign(',') ? r.takeLines() < 2 : r.takeLines() === 1) && one();
  while (one() || r.try(next));
  return draft;
}

function readDetail(r: Reader, draft: Draft, distance: number): boolean {
  const { place, text } = r;
  const [role, value] = r.meaning();
  switch (role) {
    case 'parity':
      return readParity(r, draft);
    case 'over':
      return readShape(r, draft, place, value as RepsShape['shape']);
    case 'with':
      r.next();
      r.takeSign('/');
      if (readDetail(r, draft, distance)) return true;
      throw r.unexpected('what it is swum with, such as :30 rest');
    case 'rest': {
      r.next();
      const time = needTime(r);
      takeRest(r);
      return say(r, draft, place, 'rest', startOrRest(r, time, 0));
    }
    case 'start': {
      r.next();
      if (text === '/' && r.is('parity')) return readParity(r, draft); // odds kick / evens swim
      r.take('the');
      const time = needTime(r);
      if (takeRest(r)) {
        r.note('on-is-rest', place);
        return say(r, draft, place, 'rest', startOrRest(r, time, 0));
      }
      if (value === 'at') r.note('at-is-send-off', place);
      return sendOffs(r, draft, place, time, distance);
    }
    case 'target':
      r.next();
      if (r.is('over')) return readDetail(r, draft, distance); // hold best average
      return say(r, draft, place, 'target', readingOf(r, needTime(r), fastestTarget(distance)));
    default:
      return readManner(r, draft) || r.try(() => readNumber(r, draft, place, distance));
  }
}

/** What begins with a number: `1→5`, `15 RI`, `1:30`. */
function readNumber(r: Reader, draft: Draft, place: number, distance: number): boolean {
  if (!r.isNumber()) return false;
  if (/->|→/.test(r.token(1).text)) return readShape(r, draft, place, 'descend');
  const time = needTime(r);
  if (takeRest(r)) return say(r, draft, place, 'rest', startOrRest(r, time, 0));
  if (!/[:']/.test(time.text)) return false;
  r.note('time-is-send-off', place);
  return sendOffs(r, draft, place, time, distance);
}

/** The word that makes the time before it a rest; but in `1:30 r 10` it begins a rest of its own. */
function takeRest(r: Reader): boolean {
  return !r.isNumber(r.isSign(':', 1) ? 2 : 1) && r.take('rest') !== undefined;
}

/** One send-off, or one for each lane: `:45 / :55`. */
function sendOffs(
  r: Reader,
  draft: Draft,
  place: number,
  first: WrittenTime,
  distance: number,
): true {
  const times = [first];
  while (r.isNumber(1) && r.takeSign('/')) times.push(needTime(r));
  const least = shortestSendOff(distance);
  const read = times.map((time) => startOrRest(r, time, least));
  return say(r, draft, place, 'sendOffs', read);
}

/** `descend 1-4`, `desc 2-2-2-2`, `d1-4`, `1→5`, `ascend`, `best average`. */
function readShape(r: Reader, draft: Draft, place: number, shape: RepsShape['shape']): true {
  const { text } = r;
  if (r.take('over') === undefined || text === 'd') {
    if (!r.isNumber()) throw r.unexpected('reps, such as 1-4');
  }
  if (text === 'best' && r.take('average') === undefined) throw r.unexpected('average');
  if (shape === 'descend') r.note('descend-is-faster', place);
  const numbers = [];
  if (shape !== 'best average' && r.isSign('->→', 1)) {
    do numbers.push(r.needCount('a rep, such as 4'));
    while (r.takeSign('->→'));
  }
  const pattern = numbers.length > 0 && { pattern: patternOf(r, place, numbers) };
  return say(r, draft, place, 'over', { shape, ...pattern });
}

/** `1-4` and `1-2-3-4` say from where to where, `2-2-2-2` says how many each time. */
function patternOf(r: Reader, place: number, numbers: readonly number[]): readonly number[] {
  const [from = 0, second = 0] = numbers;
  const last = numbers.at(-1) ?? 0;
  if (numbers.every((n) => n === from)) return numbers;
  const steps = numbers.length === 2 || numbers.every((n, i) => n === from + i);
  if (steps && from < second) return [from, last];
  const message = `${show(numbers.join('-'))} is no pattern of reps; write one such as 1-4 or 2-2-2-2.`;
  throw r.error('set-contradiction', message, place);
}
