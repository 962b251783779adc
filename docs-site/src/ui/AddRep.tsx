import { useSignal } from '@preact/signals';
import { plausibleTimes } from './plausible';
import { TimeField } from './TimeField';

interface Props {
  readonly id: string;
  readonly running: boolean;
  readonly distance: number;
  /** What a rep is called. */
  readonly what: string;
  /** Takes the rep as a line of the list. */
  readonly onRep: (line: string) => void;
}

/** One rep after another, for a thumb and a keypad that has no blank. */
export function AddRep({ id, running, distance, what, onRep }: Props) {
  const first = useSignal('');
  const second = useSignal('');
  const half = plausibleTimes(distance / 2);
  const add = () => {
    if (first.value.trim() === '') return;
    onRep(`${first.value.trim()} ${second.value.trim()}`.trim());
    first.value = '';
    second.value = '';
    focus('first');
  };
  const focus = (half: 'first' | 'second') => document.getElementById(`${id}-${half}`)?.focus();
  /** The keypad's own key goes on: to the second half, and then to the next rep. */
  const goOn = (event: KeyboardEvent) => {
    const name = event.target instanceof HTMLInputElement ? event.target.name : '';
    if (event.key !== 'Enter' || !name.startsWith('next-')) return;
    event.preventDefault();
    if (name === 'next-first') focus('second');
    else add();
  };
  return (
    <fieldset class="field add-rep" onKeyDown={goOn}>
      <legend>Next {what}</legend>
      <div class="row pair">
        <TimeField
          id={`${id}-first`}
          name="next-first"
          label={running ? 'At halfway' : 'First half'}
          optional
          value={first.value}
          onValue={(text) => (first.value = text)}
          within={half}
        />
        <TimeField
          id={`${id}-second`}
          name="next-second"
          label={running ? 'At the wall' : 'Second half'}
          optional
          value={second.value}
          onValue={(text) => (second.value = text)}
          within={running ? plausibleTimes(distance) : half}
        />
        <button type="button" class="button" onClick={add}>
          Add the {what}
        </button>
      </div>
    </fieldset>
  );
}
