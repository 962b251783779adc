import { PacingError, type PacingErrorCode } from '../../errors.js';
import { show } from '../../show.js';
import type { SetNote, SetNoteCode, TextSpan } from '../planned-set.js';
import { DEEPEST, LONGEST_DISTANCE } from './limits.js';
import { NOTES } from './notes.js';
import { type Comment, type Token, tokensOf } from './tokens.js';
import { type Role, WORDS } from './words.js';

const BREATH = /breath|hypox|under ?-?water|\bu\/?w\b|apno?ea/i;
const BREATH_HERE = new RegExp(`(?:no |hold(?:ing)? )?(?:${BREATH.source})`, 'iy');

/** A place in a text, stepped forward token by token. */
export class Reader {
  readonly input: string;
  readonly #tokens: readonly Token[];
  readonly #comments: readonly Comment[];
  readonly #notes = new Map<SetNoteCode, SetNote>();
  #at = 0;
  #commentsGiven = 0;
  #depth = 0;
  /** The unit that was first written behind a distance. */
  unit: string | undefined;

  constructor(input: string) {
    this.input = input;
    const { tokens, comments } = tokensOf(input);
    this.#tokens = tokens;
    this.#comments = comments;
    const breath = comments.find(({ text }) => BREATH.test(text));
    if (breath !== undefined) this.note('breath-holding', breath.start);
  }

  /** The token here, or some places on; the last one is empty. */
  token(ahead = 0): Token {
    return this.#tokens[this.#at + ahead] ?? (this.#tokens.at(-1) as Token); // never empty
  }

  get text(): string {
    return this.token().text;
  }

  /** Where the token here begins, a count of characters from 0. */
  get place(): number {
    return this.token().start;
  }

  get notes(): readonly SetNote[] {
    return [...this.#notes.values()];
  }

  /** What the token here says. */
  meaning(): readonly [Role | undefined, string] {
    const { text } = this;
    const evenPace = text === 'even' && this.is('split', 1);
    return evenPace ? ['within', 'even'] : (WORDS.get(text) ?? [undefined, '']);
  }

  /** Whether the token here, or some places on, is a number or a time. */
  isNumber(ahead = 0): boolean {
    return /^:?\d/.test(this.token(ahead).text);
  }

  /** Whether it is one of those signs. */
  isSign(signs: string, ahead = 0): boolean {
    const { text } = this.token(ahead);
    return text !== '' && signs.includes(text);
  }

  /** Whether it is a word of that role. */
  is(role: Role, ahead = 0): boolean {
    return WORDS.get(this.token(ahead).text)?.[0] === role;
  }

  /** Steps over the token here. */
  next(): Token {
    const token = this.token();
    this.#at += 1;
    return token;
  }

  /** Steps over a word of that role, if one stands here, and tells what it says. */
  take(role: Role): string | undefined {
    if (!this.is(role)) return undefined;
    return WORDS.get(this.next().text)?.[1];
  }

  /** Steps over one of those signs, if one stands here. */
  takeSign(signs: string): string | undefined {
    return this.isSign(signs) ? this.next().text : undefined;
  }

  /** Steps over line ends: how many there were. */
  takeLines(): number {
    let lines = 0;
    while (this.takeSign('\n')) lines += 1;
    return lines;
  }

  /** The whole number above zero that must stand here: reps, rounds or a distance. */
  needCount(expected: string): number {
    const { text, start } = this.token();
    if (!/^\d/.test(text)) throw this.unexpected(expected);
    const count = Number(text);
    if (Number.isInteger(count) && count >= 1 && count <= LONGEST_DISTANCE) {
      this.next();
      return count;
    }
    const message = `${show(text)} must be a whole number from 1 to ${LONGEST_DISTANCE}.`;
    throw this.error('out-of-range', message, start);
  }

  /** Does a step, or nothing: where it says false, the place is what it was. */
  try(step: () => boolean): boolean {
    const at = this.#at;
    if (step()) return true;
    this.#at = at;
    return false;
  }

  /** Reads what stands inside brackets, or inside rounds without any. */
  inside<T>(read: () => T): T {
    this.#depth += 1;
    if (this.#depth > DEEPEST) {
      throw this.error('set-unreadable', `A set goes at most ${DEEPEST} brackets deep; use fewer.`);
    }
    const inner = read();
    this.#depth -= 1;
    return inner;
  }

  /** The comments up to here that no item has been given yet. */
  takeComments(): readonly string[] {
    const from = this.#commentsGiven;
    while ((this.#comments[this.#commentsGiven]?.before ?? Infinity) <= this.#at) {
      this.#commentsGiven += 1;
    }
    const met = this.#comments.slice(from, this.#commentsGiven);
    return met.map(({ text }) => text).filter(Boolean);
  }

  note(code: SetNoteCode, position: number): void {
    if (!this.#notes.has(code)) this.#notes.set(code, { code, message: NOTES[code], position });
  }

  spanFrom(start: number): TextSpan {
    return { start, end: this.token(-1).end };
  }

  error(code: PacingErrorCode, message: string, position = this.place): PacingError {
    return new PacingError(code, message, this.input, position);
  }

  /** What stands here is not what had to; says what was expected. */
  unexpected(expected: string): PacingError {
    const { text, start, end } = this.token();
    BREATH_HERE.lastIndex = start;
    if (BREATH_HERE.test(this.input)) {
      const message =
        'Breath-holding can end in a blackout without warning, so it is not planned here; leave it out, and let lifeguards and local rules decide.';
      return this.error('breath-holding', message);
    }
    const ends = text === '' ? 'The text ends here' : 'The line ends here';
    const found = text.trim() ? `${show(this.input.slice(start, end))} cannot be read here` : ends;
    return this.error('set-unreadable', `${found}; expected ${expected}.`);
  }
}
