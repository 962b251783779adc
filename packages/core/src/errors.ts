/**
 * What went wrong, as a stable name: the contract a program branches on.
 *
 * - `wrong-shape`: a value is not the object, list or text that was asked for, or its fields do not go
 *   together.
 * - `not-a-time`: a value is not a whole number of hundredths, or not above zero where it must be.
 * - `out-of-range`: a number, count or distance is not one, or lies outside what makes sense.
 * - `unknown-choice`: an option is not one of the names it may take.
 * - `too-large`: the result would not fit in exact whole hundredths.
 * - `time-unreadable`: the text is no time, in any way a coach writes one.
 * - `time-ambiguous`: the text can be read as more than one time.
 * - `not-whole-lengths`: a distance is no whole number of the pool's lengths.
 * - `marks-out-of-order`: distances and times of a swim's marks do not both grow.
 * - `no-mark-there`: a time is needed at a place where the swim has no mark.
 * - `halfway-not-bracketed`: no mark stands at or before halfway, so there is no half to read; or no wall, so
 *   there is none to plan by.
 * - `laps-uneven`: laps of one length were needed, and these differ.
 * - `too-few-laps`: the swim has no mark at all, or fewer laps than a profile needs.
 * - `too-few-reps`: the set has no rep.
 * - `rep-distance-differs`: a rep does not end at the set's rep distance.
 * - `too-few-lanes`: the lanes do not hold all swimmers.
 * - `too-few-trials`: a fit needs two trials or more.
 * - `trial-repeated`: two trials are of the same distance.
 * - `trials-contradict`: a longer trial was swum at no slower a pace than a shorter one, or they give an impossible
 *   exponent.
 * - `no-published-factor`: no published factor holds for these pools or this event.
 * - `gain-missing`: converting by turns needs the gain per turn.
 * - `current-too-strong`: the water is as fast as the swimmer, or faster.
 * - `set-unreadable`: the text is no set, from its position on.
 * - `set-ambiguous`: the text can be read as two sets; the message shows both.
 * - `set-contradiction`: a set says one thing twice, or two things that cannot both hold.
 * - `set-incomplete`: a set leaves open a time that is needed.
 * - `too-many-reps`: a set has more swims than are read.
 * - `breath-holding`: a set asks for breath-holding, which is not planned.
 * - `cannot-tell-apart`: two swimmers start together, and no touch says whose it is.
 * - `not-measured`: the figure asked for lies outside what was published.
 * - `reserve-does-not-fit`: no critical speed uses up the reserve in these swims.
 */
export type PacingErrorCode =
  | 'wrong-shape'
  | 'not-a-time'
  | 'out-of-range'
  | 'unknown-choice'
  | 'too-large'
  | 'time-unreadable'
  | 'time-ambiguous'
  | 'not-whole-lengths'
  | 'marks-out-of-order'
  | 'no-mark-there'
  | 'halfway-not-bracketed'
  | 'laps-uneven'
  | 'too-few-laps'
  | 'too-few-reps'
  | 'rep-distance-differs'
  | 'too-few-lanes'
  | 'too-few-trials'
  | 'trial-repeated'
  | 'trials-contradict'
  | 'no-published-factor'
  | 'gain-missing'
  | 'current-too-strong'
  | 'set-unreadable'
  | 'set-ambiguous'
  | 'set-contradiction'
  | 'set-incomplete'
  | 'too-many-reps'
  | 'breath-holding'
  | 'cannot-tell-apart'
  | 'not-measured'
  | 'reserve-does-not-fit';

/**
 * The only error this library throws. Branch on `code`; show `message` to a person.
 *
 * @example
 * try {
 *   parseTime('1:75');
 * } catch (error) {
 *   isPacingError(error) && error.code; // => 'time-unreadable'
 * }
 */
export class PacingError extends RangeError {
  /** Always `PacingError`; {@link isPacingError} goes by it. */
  override readonly name = 'PacingError';
  /** What went wrong, as a stable name. */
  readonly code: PacingErrorCode;
  /** The value that was refused. */
  readonly input: unknown;
  /** For text: the place of the first character that could not be read, counted from 0. */
  declare readonly position?: number; // no field at all where there is no text

  /**
   * @param code - What went wrong, as a stable name.
   * @param message - One sentence: what was wrong and what would do.
   * @param input - The value that was refused.
   * @param position - For text: the place of the first unreadable character, a count from 0.
   */
  constructor(code: PacingErrorCode, message: string, input: unknown, position?: number) {
    super(message);
    this.code = code;
    this.input = input;
    if (position !== undefined) this.position = position;
  }
}

/**
 * Tells whether a caught value is this library's error, also where two copies of the library (one
 * as ES module, one as CommonJS) run in one program and `instanceof` would miss one.
 *
 * @param value - Anything that was caught.
 * @returns Whether it is a {@link PacingError}.
 * @throws {@link PacingError} never: any value may be asked about.
 * @example
 * try {
 *   halvesOf(splitsFromLaps(100, [parseTime('1:05.00')]));
 * } catch (error) {
 *   isPacingError(error) && error.code; // => 'halfway-not-bracketed'
 * }
 * isPacingError(new Error('something else')); // => false
 */
export function isPacingError(value: unknown): value is PacingError {
  try {
    return value instanceof Error && value.name === 'PacingError' && 'code' in value;
  } catch {
    return false; // a proxy or a getter threw
  }
}

/**
 * What a `safe…` reader gives: a value, or the error that says why there is none. Ask `ok` first; TypeScript
 * then knows which of the two is there.
 */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: PacingError };

/** Runs a reader and hands back its {@link PacingError} instead of throwing it. */
export function attempt<T>(read: () => T): Result<T> {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (isPacingError(error)) return { ok: false, error };
    throw error;
  }
}
