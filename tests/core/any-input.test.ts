import { isDeepStrictEqual } from 'node:util';
import * as backhalf from 'backhalf';
import { PacingError } from 'backhalf';
import * as tables from 'backhalf/tables';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { argumentsFor } from '../from-type.js';
import { anything } from '../generators.js';
import { codesTold } from '../repo/codes-told.js';
import { publicNames } from '../repo/surface.js';

// Whatever goes into any public function: plain finite data comes out, or a PacingError that its doc
// comment tells of. Functions are found by themselves, and arguments made from their types.

const library: Readonly<Record<string, unknown>> = { ...backhalf, ...tables };
const functions = publicNames
  .filter(({ kind }) => kind === 'function')
  .map((name) => ({ name, call: library[name.name] as (...args: unknown[]) => unknown }));

test('there are functions to try', () => {
  expect(functions.length).toBeGreaterThan(40);
});

describe.each(functions)('$name.name', ({ name, call }) => {
  const told = codesTold(name.name);
  let answers = 0;
  const tryWith = (args: readonly unknown[]) => {
    args.forEach(freeze); // a function that writes to its input then throws a TypeError
    let value: unknown;
    try {
      value = call(...args);
    } catch (error) {
      if (!(error instanceof PacingError)) throw error;
      expect(told, `a code that the doc comment of ${name.name} tells`).toContain(error.code);
      return;
    }
    expectPlain(value);
    answers += 1;
  };

  test('arguments of the right type, mostly', () => {
    fc.assert(fc.property(argumentsFor(name), tryWith));
    expect(answers, 'calls that were not refused').toBeGreaterThan(0);
  });

  test('anything, and any number of arguments', () => {
    fc.assert(fc.property(fc.array(anything, { maxLength: call.length + 2 }), tryWith));
  });
});

/** Finite numbers, no -0, and the same after a way through JSON. An error in a Result is no data. */
function expectPlain(value: unknown): void {
  if (value === undefined) expect.fail('nothing came out');
  if (isRefusal(value)) return;
  if (!isDeepStrictEqual(JSON.parse(JSON.stringify(value)), value)) {
    expect.fail(`no plain finite data: ${fc.stringify(value)}`);
  }
}

function isRefusal(value: unknown): boolean {
  return typeof value === 'object' && (value as { ok?: unknown }).ok === false;
}

/** Freezes all of it that can be frozen; proxies may object. */
function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null) return;
  try {
    if (Object.isFrozen(value)) return;
    Object.freeze(value);
    Object.values(Object.getOwnPropertyDescriptors(value)).forEach(({ value: inner }) => {
      freeze(inner);
    });
  } catch {
    // Left as it is.
  }
}
