import { NumberTable, ResultCard } from '~/ui';
import type { Answer } from './answer';

/** The answer in the new pool, with the source of every figure beside it. */
export const Result = ({ answer }: { readonly answer: Answer }) => {
  const { headline, beside, cautions, sentence, table, sources, working } = answer;
  return (
    <ResultCard
      headline={headline}
      beside={beside}
      cautions={cautions}
      sentence={sentence}
      working={working.map((line) => <p key={line}>{line}</p>)}
    >
      {table && (
        <div class="worded">
          <NumberTable {...table} />
        </div>
      )}
      <section class="sources" aria-label="Sources">
        <p class="sources-title">Where the figures come from</p>
        <dl>
          {sources.map(({ method, source }) => (
            <div key={method}>
              <dt>{method}</dt>
              <dd>{source}</dd>
            </div>
          ))}
        </dl>
      </section>
    </ResultCard>
  );
};
