import { formatTime, pacePer, safeParseTime, timeAtPace } from 'backhalf';
import { useId, useState } from 'react';

/** A field for the second half of a rep: what it promises over 1500. */
export function HonestPace({ half = 50, initial = '33.5' }) {
  const [text, setText] = useState(initial);
  const id = useId();
  const read = safeParseTime(text);
  const pace = read.ok && read.value > 0 ? pacePer(read.value, half) : null;
  return (
    <p>
      <label htmlFor={id}>Second half of a rep</label>
      <input
        id={id}
        inputMode="decimal"
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <output htmlFor={id}>
        {pace === null
          ? (read.error?.message ?? 'A half takes some time.')
          : `${formatTime(pace)} per 100, ${formatTime(timeAtPace(pace, 1500))} for 1500`}
      </output>
    </p>
  );
}
