import type { TableRow } from '~/ui/NumberTable';
import type { Figured } from '~/ui/ResultCard';

/** What a conversion shows, whatever was converted. */
export interface Answer {
  readonly headline: Figured;
  /** Other answers to hold against it; none is averaged with another. */
  readonly beside: readonly Figured[];
  /** The result in one sentence. */
  readonly sentence: string;
  readonly cautions: readonly string[];
  /** Every method that answers, one a row; none where there is only one way. */
  readonly table: {
    readonly caption: string;
    readonly columns: readonly string[];
    readonly rows: readonly TableRow[];
  } | null;
  /** Where each method’s figures come from. */
  readonly sources: readonly { readonly method: string; readonly source: string }[];
  /** How the figures came about, one sentence each. */
  readonly working: readonly string[];
}

/** What is wrong, by the name of the field that would mend it. */
export type Problems = Readonly<Record<string, string>>;

/** An answer, or what must be put right first. */
export type Outcome =
  | { readonly answer: Answer; readonly problems?: never }
  | { readonly answer?: never; readonly problems: Problems };

export const refused = (field: string, message: string): Outcome => ({
  problems: { [field]: message },
});

/** Those of the fields that have something wrong. */
export const problemsOf = (all: Readonly<Record<string, string | null>>): Problems =>
  Object.fromEntries(
    Object.entries(all).filter((entry): entry is [string, string] => entry[1] !== null),
  );

export const any = (problems: Problems): boolean => Object.keys(problems).length > 0;
