import type { Slip, Splits } from 'backhalf';

interface Props {
  readonly slips: readonly Slip[];
  readonly onMend: (swim: Splits) => void;
}

/** Laps that are likely a mistake, each with why; where it can be mended, by a person's own hand. */
export function Slips({ slips, onMend }: Props) {
  if (slips.length === 0) return null;
  return (
    <div class="cautions">
      <p class="cautions-title">Is this what was swum?</p>
      <ul>
        {slips.map(({ lap, why, mend }) => (
          <li key={lap}>
            {why}
            {mend && (
              <button
                type="button"
                class="button quiet mend"
                aria-label={`Mend lap ${lap}`}
                onClick={() => onMend(mend)}
              >
                Mend it
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
