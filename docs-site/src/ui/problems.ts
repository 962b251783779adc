import type { Problem } from './ErrorSummary';

/** What is wrong, by the field that would mend it, in the order in which it should be put right. */
export type Errors = Readonly<Record<string, string | readonly string[] | null>>;

/** Each error as a way to its field. */
export const problemsOf = (id: string, errors: Errors): readonly Problem[] =>
  Object.entries(errors).flatMap(([name, wrong]) =>
    [wrong ?? []].flat().map((message) => ({ id: `${id}-${name}`, message })),
  );

/** What an answer waits for: `The plan appears once this is put right: …`. */
export const waitingFor = (awaited: string, problems: readonly Problem[]): string =>
  `${awaited} once this is put right: ${problems[0]?.message ?? ''}${others(problems.length - 1)}`;

/** On a phone this stands under the fields as they are typed in: one at a time, so that it covers little. */
const others = (count: number): string => (count > 0 ? ` And ${count} more.` : '');
