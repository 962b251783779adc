import type { SwimManner } from '../planned-set.js';

// Every spelling that is read: by what it says, the way it is written first. Signs are words, too.
const SPELLINGS = {
  stroke: {
    free: 'free|freestyle|fr|fs',
    back: 'back|backstroke|bk',
    breast: 'breast|breaststroke|br',
    fly: 'fly|butterfly|fl',
    medley: 'IM|medley',
    choice: 'choice',
  },
  kind: { swim: 'swim', kick: 'kick|k', pull: 'pull|p', drill: 'drill' },
  effort: { easy: 'easy|ez', moderate: 'moderate|mod', fast: 'fast', sprint: 'sprint' },
  within: { build: 'build', negative: 'negative split|negative|neg|ns|(-)', even: 'even split' },
  parity: { odd: 'odds|odd', even: 'evens', unclear: 'even' },
  over: {
    descend: 'descend|descending|desc|d',
    ascend: 'ascend|ascending|asc',
    'best average': 'best average|best',
  },
  by: { by: 'by' },
  target: { hold: 'hold|in' },
  start: { on: 'on|/', at: '@|at' },
  rest: { rest: 'r|rest|ri' },
  with: { with: 'with|w' },
  heading: {
    'warm-up': 'Warm-up|warm|warmup|wu',
    'pre-set': 'Pre-set|pre|preset',
    'main set': 'Main set|main|ms',
    'cool-down': 'Cool-down|cool|cooldown|warmdown|cd|wd',
  },
  total: { total: 'total|=' },
  broken: { broken: 'broken' },
  rounds: { rounds: 'rounds|round' },
  times: { times: 'x|×|*' },
  seconds: { seconds: "s|\"|''|sec|secs|second|seconds" },
  minutes: { minutes: "min|'|mins|minute|minutes" },
  unit: { m: 'm|meters|metres', yd: 'yd|y|yds|yards' },
  // What may follow another word and says nothing more.
  split: { split: 'split|pace' },
  average: { average: 'average|avg|ave' },
  reps: { reps: 'reps|rep' },
  of: { of: 'of' },
  the: { the: 'the' },
  part: { part: 'set|up|down' },
} as const;

/** What a word is about. */
export type Role = keyof typeof SPELLINGS;

/** What each word says. */
export const WORDS: ReadonlyMap<string, readonly [Role, string]> = new Map(
  Object.entries(SPELLINGS).flatMap(([role, values]) =>
    Object.entries<string>(values).flatMap(([value, spellings]) =>
      spellings.split('|').map((word) => [word.toLowerCase(), [role as Role, value]] as const),
    ),
  ),
);

/** How a value is written. */
export function wordFor(role: Role, value: string): string {
  return (SPELLINGS[role] as Record<string, string>)[value]?.split('|')[0] ?? '';
}

/** The values that a role may take. */
export function valuesOf<R extends Role>(role: R): readonly (keyof (typeof SPELLINGS)[R])[] {
  return Object.keys(SPELLINGS[role]) as (keyof (typeof SPELLINGS)[R])[];
}

/** The roles that say how a swim is swum. */
export const MANNER = ['stroke', 'kind', 'effort', 'within'] as const satisfies readonly (
  | keyof SwimManner
  | Role
)[];
