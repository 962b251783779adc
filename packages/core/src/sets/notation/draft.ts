import { show } from '../../show.js';
import type { SetSwims } from '../planned-set.js';
import type { Reader } from './reader.js';

type Details = Omit<SetSwims, 'type' | 'reps' | 'distances' | 'source'>;

/** What has been said of a part so far, and where each detail stands. */
export interface Draft {
  readonly said: { -readonly [Field in keyof Details]: Details[Field] };
  readonly places: Record<string, number>;
}

/** Adds a detail that was read from `place` on; saying one twice is refused. */
export function say(
  r: Reader,
  draft: Draft,
  place: number,
  field: keyof Details,
  value: unknown,
): true {
  if (draft.said[field] !== undefined) {
    const again = show(r.input.slice(place, r.spanFrom(place).end));
    const message = `${again} says again what was said before; keep one of the two.`;
    throw r.error('set-contradiction', message, place);
  }
  Object.assign(draft.said, { [field]: value });
  draft.places[field] = place;
  return true;
}
