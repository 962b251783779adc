import type { TouchRow } from './touch-rows';
import type { Word } from './touches-text';

interface Props {
  readonly label: string;
  readonly rows: readonly TouchRow[];
  /** Takes a person’s word on a touch; nothing takes it back. */
  readonly onWord: (index: number, word: Word | 'nobody' | null) => void;
}

/** Touches and whose they are. A doubtful one offers what else it may be, one tap away. */
export const TouchList = ({ label, rows, onWord }: Props) => (
  <ol class="touch-list" aria-label={label}>
    {rows.map((row) => (
      <li key={row.index} class={row.doubtful ? 'doubtful' : ''}>
        <p>
          <span class="touch-time">{row.time}</span> {row.text}
          {row.doubtful && <strong> – doubtful, {row.sure} sure</strong>}
          {row.said && ' – as you said'}
        </p>
        {row.choices.length > 0 && (
          <fieldset class="touch-choices" aria-label={`Whose touch was ${row.time}?`}>
            {row.choices.map(({ text, word }, i) => (
              <button
                key={text}
                type="button"
                class="button quiet"
                onClick={() => onWord(row.index, word)}
              >
                {i === 0 ? `Yes, ${text}` : text.charAt(0).toUpperCase() + text.slice(1)}
              </button>
            ))}
          </fieldset>
        )}
        {row.said && (
          <button type="button" class="button quiet" onClick={() => onWord(row.index, null)}>
            Take that back
          </button>
        )}
      </li>
    ))}
  </ol>
);
