import { useSignal } from '@preact/signals';
import { type Csv, csvOf } from './csv';
import { ErrorSummary, type Problem } from './ErrorSummary';

interface Props {
  /** Where the calculator lives, with what was typed: `/calculators/halves/?v=1&…`. */
  readonly href: string;
  /** What is still wrong: then none of this is done, and it is said why. */
  readonly problems: readonly Problem[];
  readonly csv: Csv | null;
}

/** Copy the link, print one sheet, take the table along. */
export function ShareBar({ href, problems, csv }: Props) {
  const said = useSignal('');
  const refused = useSignal(0);
  const unless = (act: () => void) => () => {
    if (problems.length > 0) refused.value += 1;
    else {
      refused.value = 0;
      act();
    }
  };
  const copy = async () => {
    const link = new URL(href, location.href).href;
    try {
      await navigator.clipboard.writeText(link);
      said.value = 'Link copied.';
    } catch {
      said.value = `Copy this link: ${link}`;
    }
  };
  return (
    <div class="share">
      {refused.value > 0 && problems.length > 0 && (
        <ErrorSummary key={refused.value} problems={problems} />
      )}
      <div class="share-buttons">
        <button type="button" class="button quiet" onClick={unless(copy)}>
          Copy link
        </button>
        <button type="button" class="button quiet" onClick={unless(() => window.print())}>
          Print
        </button>
        {csv && (
          <button
            type="button"
            class="button quiet"
            onClick={unless(() => download(`${csv.name}.csv`, csvOf(csv.rows)))}
          >
            Download CSV
          </button>
        )}
      </div>
      <p class="share-said" role="status">
        {said.value}
      </p>
    </div>
  );
}

function download(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob(['\uFEFF', text], { type: 'text/csv' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
