import type { ComponentChildren } from 'preact';
import { Status } from './Status';

export interface Figured {
  readonly label: string;
  readonly figure: string;
  /** One line that says what the figure means. */
  readonly note?: string | undefined;
}

export interface ResultCardProps {
  /** The one figure the page is for; none while an answer is awaited. */
  readonly headline: Figured | null;
  /** Figures to hold against it, such as the naive one. */
  readonly beside?: readonly Figured[];
  /** What to know before trusting it, one sentence each. */
  readonly cautions?: readonly string[];
  /** The whole result in one sentence, for those who listen. */
  readonly sentence: string;
  /** What the result waits for, shown in the headline's place. */
  readonly waiting?: string | null;
  /** Chart and table. */
  readonly children?: ComponentChildren;
  /** How the figures came about, shown on demand. */
  readonly working?: ComponentChildren;
}

/**
 * The answer, or what it waits for. Headline first, what it stands against second, cautions third, the working on
 * demand.
 */
export function ResultCard(props: ResultCardProps) {
  const { headline, beside = [], cautions = [], sentence, waiting, children, working } = props;
  return (
    <div class="result">
      <Status sentence={headline === null ? (waiting ?? '') : sentence} />
      {headline === null ? (
        <p class="waiting">{waiting}</p>
      ) : (
        <>
          <output class="headline" aria-live="off">
            <BigFigure {...headline} />
          </output>
          {beside.length > 0 && (
            <div class="beside">
              {beside.map((item) => (
                <p key={item.label}>
                  <BigFigure {...item} />
                </p>
              ))}
            </div>
          )}
          <Cautions sentences={cautions} />
          {children}
          {working && (
            <details>
              <summary>How these figures came about</summary>
              <div class="working">{working}</div>
            </details>
          )}
        </>
      )}
    </div>
  );
}

const BigFigure = ({ label, figure, note }: Figured) => (
  <>
    <span class="label">{label}</span>
    <span class="figure">{figure}</span>
    {note && <span class="note">{note}</span>}
  </>
);

/** What to know before trusting a figure. */
export function Cautions({ sentences }: { readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <div class="cautions">
      <p class="cautions-title">Before you trust this</p>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
