import { choiceOf, countOf, fieldsOf, itemsOf, numberOf, textOf } from '../../check.js';
import { PacingError } from '../../errors.js';
import { differenceOf, type Hundredths, hundredths, timeOf } from '../../time/hundredths.js';

/** A swimmer to be timed with one thumb. */
export interface DeckSwimmer {
  /** As the readings shall name them. */
  readonly name: string;
  /** The time expected of the swimmer for a whole rep, in hundredths of a second; not a pace per 100. */
  readonly repTime: Hundredths;
  /** The lane, a count from 1; 1 unless given. */
  readonly lane?: number;
}

/** A set about to be timed with one thumb: who leaves when. */
export interface DeckPlan {
  /** The swimmers; those of a lane in the order in which they leave. */
  readonly swimmers: readonly DeckSwimmer[];
  /** How many reps each swims, a count. */
  readonly reps: number;
  /** The distance of a rep, in the pool's unit. */
  readonly repDistance: number;
  /** Time from one start of a swimmer to the next, in hundredths of a second. */
  readonly sendOff: Hundredths;
  /** Time from one swimmer of a lane to the next, in hundredths of a second; 0 for a lane of one. */
  readonly stagger: Hundredths;
  /** Which marks are touched in: at halfway and at the finish, or only at the finish. */
  readonly marks: 'halfway-and-finish' | 'finish';
}

/** A mark of a rep. */
export type DeckMark = 'halfway' | 'finish';

/** A touch of the thumb that says more than its time. */
export interface Touch {
  /** Time since the first swimmer of each lane first left, in hundredths of a second. */
  readonly time: Hundredths;
  /** The lane, where it was said: a count from 1. */
  readonly lane?: number;
  /** The kind of mark, where it was said. */
  readonly mark?: DeckMark;
  /** The swimmer's place in the plan, where a person said whose it was: a count from 0. */
  readonly swimmer?: number;
  /** The rep, where a person said which it was: a count from 1. */
  readonly rep?: number;
}

/** A checked plan: each swimmer with lane and first start. */
export interface Roster {
  readonly swimmers: readonly {
    readonly name: string;
    readonly repTime: number;
    readonly lane: number;
    readonly start: number;
  }[];
  readonly reps: number;
  readonly repDistance: number;
  readonly sendOff: number;
  readonly marks: readonly DeckMark[];
}

const MOST_MARKS = 100_000; // swimmers × reps × marks

/** A plan out of plain data. */
export function rosterOf(value: unknown): Roster {
  const plan = fieldsOf(value, 'The deck plan');
  const sendOff = timeOf(plan['sendOff'], 'The send-off');
  const stagger = differenceOf(plan['stagger'], 'The stagger');
  const reps = countOf(plan['reps'], 'The number of reps', 1, 1000);
  const marks = choiceOf(plan['marks'], ['halfway-and-finish', 'finish'], 'The marks');
  const leaving = new Map<number, number>(); // how many of a lane have left already
  const swimmers = itemsOf(plan['swimmers'], 'The swimmers').map((item, i) => {
    const name = `Swimmer ${i + 1}`;
    const fields = fieldsOf(item, name);
    const lane = fields['lane'] === undefined ? 1 : countOf(fields['lane'], `${name}'s lane`);
    const before = leaving.get(lane) ?? 0;
    leaving.set(lane, before + 1);
    return {
      name: textOf(fields['name'], `${name}'s name`),
      repTime: timeOf(fields['repTime'], `${name}'s rep time`),
      lane,
      start: hundredths(before * stagger),
    };
  });
  if (swimmers.length === 0 || stagger < 0 || swimmers.length * reps * 2 > MOST_MARKS) {
    const message = `A deck plan needs at least one swimmer, a stagger of zero or more, and at most ${MOST_MARKS} marks in all.`;
    throw new PacingError('out-of-range', message, value);
  }
  return {
    swimmers,
    reps,
    repDistance: numberOf(plan['repDistance'], 'The rep distance', { above: 0, max: 1e9 }),
    sendOff,
    marks: marks === 'finish' ? ['finish'] : ['halfway', 'finish'],
  };
}

/** Touches out of plain data: bare times, or times with lane or mark. */
export function touchesOf(value: unknown): readonly Touch[] {
  const items = itemsOf(value, 'The touches');
  if (items.length > MOST_MARKS) {
    const message = `At most ${MOST_MARKS} touches can be read at once, not ${items.length}.`;
    throw new PacingError('out-of-range', message, value);
  }
  return items.map((item, i) => {
    const name = `Touch ${i + 1}`;
    if (typeof item === 'number') return { time: timeOf(item, name) };
    const { time, lane, mark, swimmer, rep } = fieldsOf(item, name);
    return {
      time: timeOf(time, `${name}'s time`),
      ...(lane !== undefined && { lane: countOf(lane, `${name}'s lane`) }),
      ...(mark !== undefined && { mark: choiceOf(mark, ['halfway', 'finish'], `${name}'s mark`) }),
      ...(swimmer !== undefined && { swimmer: countOf(swimmer, `${name}'s swimmer`, 0) }),
      ...(rep !== undefined && { rep: countOf(rep, `${name}'s rep`) }),
    };
  });
}

/** When the rep of a mark began, on the clock of the touches. */
export function repStart(
  { swimmers, sendOff, marks }: Roster,
  swimmer: number,
  mark: number,
): number {
  return (swimmers[swimmer]?.start ?? 0) + Math.floor(mark / marks.length) * sendOff;
}

/** Whether a touch may be a swimmer's mark, by what it says of itself. */
export function mayBe(
  touch: Touch,
  { swimmers, marks }: Roster,
  swimmer: number,
  mark: number,
): boolean {
  const said = (word: unknown, is: unknown): boolean => word === undefined || word === is;
  return (
    said(touch.lane, swimmers[swimmer]?.lane) &&
    said(touch.swimmer, swimmer) &&
    said(touch.rep, Math.floor(mark / marks.length) + 1) &&
    said(touch.mark, marks[mark % marks.length])
  );
}
