import { PacingError } from 'backhalf';

/** The error a call refuses its input with. Any other error goes on up; none at all is one too. */
export function refusal(call: () => unknown): PacingError {
  let value: unknown;
  try {
    value = call();
  } catch (error) {
    if (error instanceof PacingError) return error;
    throw error;
  }
  throw new Error(`Nothing was refused; the call gave ${JSON.stringify(value)}.`);
}

/** The code of that error. */
export const codeOf = (call: () => unknown) => refusal(call).code;
