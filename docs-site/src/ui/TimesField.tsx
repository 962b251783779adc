import { formatTime } from 'backhalf';
import { described, FieldFrame, plainText } from './FieldFrame';
import { chooseTime, saidTimes, type TimesText } from './times-text';
import type { Bound } from './use-form';
import { useLateError } from './use-late-error';

interface Props extends Bound {
  readonly label: string;
  readonly hint?: string;
  /** The text as `readTimesText` reads it. */
  readonly reading: TimesText;
  /** What one time is called: `lap`. */
  readonly what: string;
  /** What the calculator finds wrong, in the order in which it should be put right. */
  readonly errors: readonly string[];
  /** How many lines it shows before it scrolls, a count; 3 unless given. */
  readonly lines?: number;
  /** Whether words stand beside the times, so that the keypad needs letters. */
  readonly words?: boolean;
}

/** Many times at once, typed or pasted in any order of rows and columns. */
export function TimesField(props: Props) {
  const { id, name, label, hint, value, onValue, reading, what, errors, lines = 3, words } = props;
  const unclear = reading.times.filter(({ choices }) => choices.length > 0);
  const late = useLateError(shortened(errors), value);
  const said = [saidTimes(reading.times, what), ...reading.leftOut].filter(Boolean).join(' ');
  return (
    <div>
      <FieldFrame id={id} label={label} hint={hint} error={late.shown} said={said}>
        <textarea
          {...plainText}
          {...described(id, { hint, error: late.shown, said })}
          id={id}
          name={name}
          class="times"
          inputmode={words ? 'text' : 'decimal'}
          rows={lines}
          value={value}
          onInput={(event) => onValue(event.currentTarget.value)}
          onBlur={late.onBlur}
        />
      </FieldFrame>
      {unclear.map((listed) => (
        <fieldset class="readings" key={listed.at}>
          <legend>
            “{listed.typed}” can be read in {listed.choices.length} ways. Which is meant?
          </legend>
          {listed.choices.map((choice) => (
            <label key={choice}>
              <input
                type="radio"
                name={`${id}-reading-${listed.at}`}
                checked={choice === listed.time}
                onChange={() => onValue(chooseTime(value, listed, choice))}
              />
              {formatTime(choice)}
            </label>
          ))}
        </fieldset>
      ))}
    </div>
  );
}

const enough = 3;

function shortened(errors: readonly string[]): string | null {
  if (errors.length <= enough) return errors.join(' ') || null;
  return `${errors.slice(0, enough).join(' ')} And ${errors.length - enough} more.`;
}
