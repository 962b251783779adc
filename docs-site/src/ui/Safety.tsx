const sentences = {
  effort:
    'Hard swims come after a warm-up, in good health, with a coach or lifeguard on deck. Anyone with a heart or breathing condition, or who feels unwell, asks a doctor first.',
  breath: 'No breath-holding contests, and no hyperventilating before a swim under water.',
  'open water':
    'Never swim alone in open water. Local rules and the event’s officials decide; check temperature, currents and weather on the day.',
} as const;

interface Props {
  readonly about: readonly (keyof typeof sentences)[];
}

/** The usual cautions, on every page where a figure could lead someone to swim hard. */
export const Safety = ({ about }: Props) => (
  <aside class="safety not-content" aria-label="Safety">
    <ul>
      {about.map((what) => (
        <li key={what}>{sentences[what]}</li>
      ))}
    </ul>
    <p>
      This tool informs a coach. It is no medical advice, and it defers to licensed practice and
      local codes. <a href="/safety/">More on safety</a>
    </p>
  </aside>
);
