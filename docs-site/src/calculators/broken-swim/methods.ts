import {
  type BrokenSwimReading,
  convertDistance,
  type Estimate,
  impliedTime,
  isPacingError,
  type Recovery,
  restGain,
  type SetReading,
  type SwumSet,
} from 'backhalf';
import type { MethodNote } from '~/ui/MethodNotes';

/** One way to read a broken swim, and what it makes of this one. */
export interface Method {
  /** Methods of one family share assumptions and cautions. */
  readonly family: string;
  readonly name: string;
  /** None where the method cannot answer. */
  readonly estimate: Estimate | null;
  /** Then what it would take, in a sentence. */
  readonly lacks: string | null;
}

/** The swimmer's reserve in metres and its time constant in seconds, where they are known. */
export interface Reserve {
  readonly metres: number | null;
  readonly tau: number | null;
}

/** Every method, in the same order whether it can answer or not. */
export function methodsOf(
  set: SwumSet,
  reading: SetReading,
  race: BrokenSwimReading,
  whole: BrokenSwimReading,
  reserve: Reserve,
): readonly Method[] {
  return [
    {
      family: 'Twice the second halves',
      name: 'Twice the second halves',
      estimate: race.backHalf,
      lacks: null,
    },
    {
      family: 'Published rest data',
      name: 'Published rest data',
      estimate: race.restAware,
      lacks: race.restAware === null ? whyNoRestData(set, reading) : null,
    },
    ...forms.map(({ name, form }) => {
      const answer =
        race.distance === whole.distance
          ? implied(set, reserve, form)
          : `A reserve answers for the ${whole.distance} ${set.pool.unit} swum; leave the race distance empty to see it.`;
      const lacks = typeof answer === 'string' ? answer : null;
      return {
        family: 'The reserve',
        name,
        estimate: typeof answer === 'string' ? null : answer,
        lacks,
      };
    }),
  ];
}

const forms: readonly { readonly name: string; readonly form: Recovery['form'] }[] = [
  { name: 'Reserve, linear', form: 'linear' },
  { name: 'Reserve, differential', form: 'differential' },
  { name: 'Reserve, integral', form: 'integral' },
];

function implied(
  set: SwumSet,
  { metres, tau }: Reserve,
  form: Recovery['form'],
): Estimate | string {
  if (metres === null) return 'Needs the swimmer’s reserve.';
  if (form === 'integral' && tau === null) return 'Needs the swimmer’s time constant.';
  const recovery: Recovery = form === 'integral' ? { form, tau: tau ?? 0 } : { form };
  return orWhyNot(() => impliedTime(set, { reserve: metres, recovery }));
}

function whyNoRestData(set: SwumSet, { rest }: SetReading): string {
  if (rest === null) return 'Needs the rest between the pieces.';
  const metres = convertDistance(set.repDistance, set.pool.unit, 'm');
  const gain = orWhyNot(() => restGain(metres, rest));
  return typeof gain === 'string' ? gain : 'Needs two pieces or more.';
}

function orWhyNot<T>(act: () => T): T | string {
  try {
    return act();
  } catch (error) {
    if (!isPacingError(error)) throw error;
    return error.message;
  }
}

/** What goes with the figures of each family of methods. */
export function notesOf(methods: readonly Method[]): readonly MethodNote[] {
  const families = [...new Set(methods.map(({ family }) => family))];
  return families.map((family) => {
    const own = methods.filter((method) => method.family === family);
    const found = own.flatMap(({ estimate }) => estimate ?? []);
    return {
      name: family,
      assumptions: found.flatMap(({ assumptions }) => assumptions),
      cautions: found.flatMap(({ cautions }) => cautions.map(({ message }) => message)),
      // By name where some of the family have a figure.
      lacks: own.flatMap(({ name, lacks }) => {
        if (lacks === null) return [];
        return found.length > 0 ? `${name}: ${lacks}` : lacks;
      }),
    };
  });
}
