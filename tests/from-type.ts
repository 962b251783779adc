import {
  fitCriticalSpeed,
  fitPowerLaw,
  formatIsoDuration,
  formatTime,
  type Hundredths,
  halvesOf,
  LCM,
  parseSet,
  planRace,
  projectFromSet,
  readSet,
  splitsFromLaps,
} from 'backhalf';
import fc from 'fast-check';
import ts from 'typescript';
import {
  anything,
  difference,
  lap,
  openWaterLegs,
  pool,
  swim,
  swumSet,
  trials,
  unevenSwim,
} from './generators.js';
import { checker, type PublicName } from './repo/surface.js';

// Arguments made from the library's own types, so that a new function is tried without a line here.
// A type that random fields would never fill with sense has its maker below.

/** Set notation, some of it broken. */
const notation = fc
  .array(
    fc.constantFrom(
      '10x100',
      '4 x 50',
      '2x(',
      ')',
      'on 1:30',
      '@ :45',
      'r10',
      '400 fr',
      'fly',
      '\n',
    ),
    { maxLength: 8 },
  )
  .map((parts) => parts.join(' '));

const plannedSet = fc.constantFrom(
  ...['10x100 on 1:30', '2x(4x50 on :45, 50 ez on 1:00)', '400 + 8x25 fly r15'].map(parseSet),
);

const table = fc
  .array(fc.constantFrom('50', '100', '31.5', '1:05.3', ';', '\t', '\n', 'Mara Quill', 'NT'), {
    maxLength: 20,
  })
  .map((cells) => cells.join(''));

const text = fc.oneof(
  difference.map((time) => formatTime(time)),
  difference.map(formatIsoDuration),
  notation,
  table,
  fc.string(),
);

const count = fc.integer({ min: 1, max: 12 });
const distance = fc.integer({ min: 1, max: 30 }).map((lengths) => lengths * 50);
const number = fc.oneof(
  distance,
  count,
  fc.double({ min: 0.1, max: 3, noNaN: true }),
  fc.double({ min: -10, max: 2000, noNaN: true }),
  fc.double(),
);
const time = fc.oneof(
  { arbitrary: lap, weight: 10 },
  { arbitrary: difference, weight: 1 },
  { arbitrary: fc.constantFrom(0, 2 ** 53 - 1, 1 - 2 ** 53), weight: 1 },
);
const pause = fc.integer({ min: 0, max: 2000 });

/** By the name of a parameter or a field: a number that makes sense there. */
const NAMED: Readonly<Record<string, fc.Arbitrary<number>>> = {
  distance,
  repDistance: distance,
  every: fc.constantFrom(50, 100),
  per: fc.constant(100),
  lengths: count,
  reps: count,
  lanes: count,
  lane: count,
  swimmers: count,
  rest: pause,
  stagger: pause,
  start: pause,
};

/** By the name of a type: what random fields would never fill with sense. */
const MAKERS: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  Hundredths: time,
  Pool: pool,
  Splits: fc.oneof(swim, unevenSwim),
  SwumSet: swumSet,
  Halves: swim.map(halvesOf),
  SetReading: swumSet.map((set) => readSet(set)),
  Estimate: swumSet.map((set) => projectFromSet(set, { distance: 400 })),
  Trial: trials.map(([first]) => first),
  CriticalSpeed: given(trials, fitCriticalSpeed),
  PowerLaw: given(trials, fitPowerLaw),
  OpenWaterLeg: openWaterLegs.map(([first]) => first),
  PlannedSet: plannedSet,
  RacePlan: fc
    .constantFrom(50, 100, 400)
    .map((race) =>
      planRace({ pool: LCM, distance: race, goal: (race * 60) as Hundredths, shape: 'even' }),
    ),
};
/** The same for lists whose items have to fit each other. */
const LIST_MAKERS: Readonly<Record<string, fc.Arbitrary<unknown>>> = { Trial: trials };

/** By the name of a function: arguments that have to fit each other. */
const FITTING: Readonly<Record<string, fc.Arbitrary<readonly unknown[]>>> = {
  judgePlan: fc.tuple(
    fc.constant(planRace({ pool: LCM, distance: 200, goal: 13_200 as Hundredths, shape: 'even' })),
    fc.array(lap, { minLength: 4, maxLength: 4 }).map((laps) => splitsFromLaps(50, laps)),
  ),
};

/** Arguments for a function, by the types of its parameters. */
export function argumentsFor({ name, symbol, declaration }: PublicName) {
  const [signature] = checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures();
  const parameters = signature?.parameters ?? [];
  const each = fc.tuple(
    ...parameters.map((it) => mostly(checker.getTypeOfSymbol(it), it.name)),
  ) as fc.Arbitrary<readonly unknown[]>;
  const fitting = FITTING[name];
  return fitting === undefined ? each : fc.oneof(each, fitting);
}

/** Values of a type, now and then spoilt: at the top, or at any place within. */
function mostly(type: ts.Type, name = '', depth = 0): fc.Arbitrary<unknown> {
  const made = MAKERS[nameOf(type)] ?? byShape(type, name, depth);
  const isNumber = nameOf(type) === 'Hundredths' || (type.flags & ts.TypeFlags.Number) !== 0;
  const good = isNumber ? (NAMED[name] ?? made) : made;
  return fc.oneof(
    { arbitrary: good, weight: 30 },
    { arbitrary: good.map(shifty), weight: 1 },
    { arbitrary: anything, weight: 1 },
  );
}

function byShape(type: ts.Type, name: string, depth: number): fc.Arbitrary<unknown> {
  const has = (flag: ts.TypeFlags) => (type.flags & flag) !== 0;
  if (type.isUnion()) return fc.oneof(...type.types.map((part) => mostly(part, name, depth)));
  if (type.isStringLiteral() || type.isNumberLiteral()) return fc.constant(type.value);
  if (has(ts.TypeFlags.BooleanLiteral)) return fc.constant(checker.typeToString(type) === 'true');
  if (has(ts.TypeFlags.Undefined)) return fc.constant(undefined);
  if (has(ts.TypeFlags.Null)) return fc.constant(null);
  if (has(ts.TypeFlags.String)) return text;
  if (has(ts.TypeFlags.Number)) return number;
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    const [item] = checker.getTypeArguments(type as ts.TypeReference);
    if (item === undefined || depth > 6) return fc.constant([]);
    const items = fc.array(mostly(item, name, depth + 1), { minLength: 1, maxLength: 6 });
    return LIST_MAKERS[nameOf(item)] ?? items;
  }
  if (!has(ts.TypeFlags.Object | ts.TypeFlags.Intersection) || depth > 6) return anything;

  const fields = checker.getPropertiesOfType(type);
  const isOptional = (field: ts.Symbol) => (field.flags & ts.SymbolFlags.Optional) !== 0;
  const made = (field: ts.Symbol) =>
    mostly(checker.getNonNullableType(checker.getTypeOfSymbol(field)), field.name, depth + 1);
  return fc.record(Object.fromEntries(fields.map((field) => [field.name, made(field)])), {
    requiredKeys: fields.filter((field) => !isOptional(field)).map((field) => field.name),
  });
}

function nameOf(type: ts.Type): string {
  return type.aliasSymbol?.name ?? type.getSymbol()?.name ?? '';
}

/** What a function gives for values it does not refuse. */
function given<T, U>(values: fc.Arbitrary<T>, call: (value: T) => U): fc.Arbitrary<U> {
  return values
    .map((value) => {
      try {
        return { answer: call(value) };
      } catch {
        return {};
      }
    })
    .filter((result): result is { answer: U } => 'answer' in result)
    .map(({ answer }) => answer);
}

function isPlain(value: unknown): value is object {
  try {
    const fields = Object.values(Object.getOwnPropertyDescriptors(value));
    return Object.getPrototypeOf(value) === Object.prototype && fields.every((it) => 'value' in it);
  } catch {
    return false; // nothing at all, or a proxy that objects
  }
}

/** The same object, but each field is no number from the second look on. */
function shifty(value: unknown): unknown {
  if (!isPlain(value)) return value;
  const fields = Object.entries(value).map(([name, field]) => {
    let looks = 0;
    return [name, { enumerable: true, get: () => (looks++ === 0 ? field : Number.NaN) }] as const;
  });
  return Object.defineProperties({}, Object.fromEntries(fields));
}
