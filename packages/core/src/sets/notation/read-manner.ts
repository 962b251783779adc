import { type Draft, say } from './draft.js';
import type { Reader } from './reader.js';

/** Reads one word on how it is swum: a stroke, a kind, an effort, a shape within, `by 25`. */
export function readManner(r: Reader, draft: Draft): boolean {
  const [role, value] = r.meaning();
  const { text, start } = r.token();
  switch (role) {
    case 'stroke':
    case 'kind':
    case 'effort':
    case 'within':
      r.next();
      if (role === 'within') r.take('split');
      if (text === 'ns') r.note('ns-is-negative-split', start);
      return say(r, draft, start, role, value);
    case 'by': {
      r.next();
      const distance = r.needCount('a distance, such as 25');
      if (r.text === 's') r.next();
      return say(r, draft, start, 'by', distance);
    }
    default:
      return false;
  }
}

/** Reads `odds kick`, `even reps: swim`; or `even` alone, an even pace. */
export function readParity(r: Reader, draft: Draft): true {
  const { start } = r.token();
  const said = r.take('parity');
  const clear = [r.take('reps'), r.takeSign(':')].some(Boolean);
  const parity = said === 'odd' ? 'odd' : 'even';
  const inner: Draft = { said: {}, places: {} };
  while (readManner(r, inner));
  const empty = Object.keys(inner.said).length === 0;
  if (said !== 'unclear' || clear || draft.said.odd !== undefined) {
    if (empty) throw r.unexpected('how those reps are swum, such as kick');
    return say(r, draft, start, parity, inner.said);
  }
  if (empty) {
    r.note('even-is-pace', start);
    return say(r, draft, start, 'within', 'even');
  }
  const message = '"even" could be an even pace or the even reps; write "even split" or "evens".';
  throw r.error('set-ambiguous', message, start);
}
