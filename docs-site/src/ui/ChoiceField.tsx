import type { Bound } from './use-form';

interface Option {
  readonly value: string;
  readonly label: string;
}

interface Props extends Bound {
  readonly label: string;
  readonly options: readonly Option[];
  /** A list that opens, for more options than fit side by side. */
  readonly as?: 'radio' | 'list';
}

/** One of a few. Choosing never moves the focus. */
export function ChoiceField({ id, name, label, options, value, onValue, as = 'radio' }: Props) {
  if (as === 'list') {
    return (
      <div class="field">
        <label for={id}>{label}</label>
        <select id={id} name={name} value={value} onChange={(e) => onValue(e.currentTarget.value)}>
          {options.map((option) => (
            <option key={option.value} value={option.value} selected={option.value === value}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
    );
  }
  return (
    <fieldset class="field choice" id={id}>
      <legend>{label}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onValue(option.value)}
          />
          {option.label}
        </label>
      ))}
    </fieldset>
  );
}
