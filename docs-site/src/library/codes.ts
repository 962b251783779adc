import caution from '../../../packages/core/src/caution.ts?raw';
import errors from '../../../packages/core/src/errors.ts?raw';
import { errorCodes } from '../../../tests/repo/error-codes';

/** A code with what it means, as its type's doc comment says it. */
export interface Code {
  readonly code: string;
  readonly meaning: string;
}

const codesIn = (source: string): readonly Code[] =>
  [...source.matchAll(/^ \* - `([a-z-]+)`: ((?:.*\n \* {3})*.*)$/gm)].map(
    ([, code = '', text = '']) => ({
      code,
      meaning: text.replace(/\n \* +/g, ' '),
    }),
  );

export const cautionCodes = codesIn(caution);

/** Each error code with the sentence of a call that raises it: the tests make the same calls. */
export const raised = codesIn(errors).map(({ code, meaning }) => {
  try {
    errorCodes[code as keyof typeof errorCodes]();
  } catch (error) {
    return { code, meaning, message: (error as Error).message };
  }
  throw new Error(`The call for ${code} raised nothing.`);
});
