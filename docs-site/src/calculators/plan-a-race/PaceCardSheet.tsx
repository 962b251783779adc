import type { PaceCard, PaceCardRow } from 'backhalf';
import { distanceText } from '~/ui/wording';
import { rowsToAColumn } from './model';

interface Props {
  readonly card: PaceCard;
  readonly unit: 'm' | 'yd';
}

const few = 12; // rows, which may be larger yet

/** The card as it is printed: one sheet, to be read from the side of the pool. */
export function PaceCardSheet({ card, unit }: Props) {
  const { title, rows, checkpoints, halfway } = card;
  const count = Math.ceil(rows.length / rowsToAColumn);
  const size = Math.ceil(rows.length / count);
  const parts = Array.from({ length: count }, (_, i) => rows.slice(i * size, (i + 1) * size));
  const quarters = new Set(checkpoints.map(({ distance }) => distance));
  return (
    <section
      class={`pace-card columns-${count}${rows.length > few ? '' : ' few'}`}
      aria-label="Pace card"
    >
      <div class="card-head">
        <p class="card-title">{title}</p>
        {halfway && (
          <p class="card-half">
            Halfway, {distanceText(halfway.distance)} {unit}
            {halfway.interpolated && ', between two walls'}: <strong>{halfway.text}</strong>
          </p>
        )}
      </div>
      <div class="card-columns">
        {parts.map((part) => (
          <Part
            key={part[0]?.distance}
            rows={part}
            quarters={quarters}
            unit={unit}
            caption={`${title}, from ${part[0]?.text.distance} to ${part.at(-1)?.text.distance}`}
          />
        ))}
      </div>
      <p class="said">In bold: the walls nearest to each quarter of the race.</p>
    </section>
  );
}

interface PartProps {
  readonly rows: readonly PaceCardRow[];
  readonly quarters: ReadonlySet<number>;
  readonly unit: 'm' | 'yd';
  readonly caption: string;
}

const Part = ({ rows, quarters, unit, caption }: PartProps) => (
  <table class="numbers">
    <caption class="sr-only">{caption}</caption>
    <thead>
      <tr>
        <th scope="col">{unit === 'm' ? 'Metres' : 'Yards'}</th>
        <th scope="col">Lap</th>
        <th scope="col">Watch</th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ distance, text }) => (
        <tr key={distance} class={quarters.has(distance) ? 'quarter' : undefined}>
          <th scope="row">{distanceText(distance)}</th>
          <td>{text.lap}</td>
          <td>{text.time}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
