import { formatTime, type TimeWindow } from 'backhalf';
import { described, FieldFrame, plainText } from './FieldFrame';
import { readTimeText, withChoice } from './time-text';
import type { Bound } from './use-form';
import { useLateError } from './use-late-error';

interface Props extends Bound {
  readonly label: string;
  readonly hint?: string;
  /** Times that make sense here: readings outside are not offered where one lies inside. */
  readonly within?: TimeWindow | undefined;
  /** What the calculator finds wrong with a time that reads. */
  readonly error?: string | null;
  readonly optional?: boolean;
}

/** One time, in any of the ways a coach writes one. */
export function TimeField(props: Props) {
  const { id, name, label, hint, value, onValue, within, optional = false } = props;
  const { typed, time, choices, error } = readTimeText(value, label, within);
  const empty = optional && typed.trim() === '';
  const late = useLateError(empty ? null : (error ?? props.error), value);
  const written = time === null ? '' : formatTime(time);
  const said = written !== '' && written !== typed.trim() ? `Read as ${written}` : null;
  const asked = choices.length > 0 && late.shown === error ? null : late.shown;

  return (
    <div>
      <FieldFrame id={id} label={label} hint={hint} error={asked} said={said}>
        <input
          {...plainText}
          {...described(id, { hint, error: asked, said })}
          id={id}
          name={name}
          class="time"
          type="text"
          inputmode="decimal"
          value={typed}
          onInput={(event) => onValue(event.currentTarget.value)}
          onBlur={late.onBlur}
        />
      </FieldFrame>
      {choices.length > 0 && (
        <fieldset class="readings">
          <legend>
            “{typed.trim()}” can be read in {choices.length} ways. Which is meant?
          </legend>
          {choices.map((reading) => (
            <label key={reading}>
              <input
                type="radio"
                name={`${id}-reading`}
                checked={reading === time}
                onChange={() => onValue(withChoice(typed, reading))}
              />
              {formatTime(reading)}
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}
