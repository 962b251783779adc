import { useSignal } from '@preact/signals';
import { plausibleTimes } from './plausible';
import { TimeField } from './TimeField';

interface Props {
  readonly id: string;
  readonly running: boolean;
  readonly distance: number;
  /** What a rep is called; `rep` unless given. */
  readonly what?: string;
  /** Takes the rep as a line of the list. */
  readonly onRep: (line: string) => void;
}

/** One rep after another, for a thumb and a keypad that has no blank. */
export function AddRep({ id, running, distance, what = 'rep', onRep }: Props) {
  const first = useSignal('');
  const second = useSignal('');
  const half = plausibleTimes(distance / 2);
  const add = () => {
    if (first.value.trim() === '') return;
    onRep(`${first.value.trim()} ${second.value.trim()}`.trim());
    first.value = '';
    second.value = '';
    document.getElementById(`${id}-first`)?.focus();
  };
  return (
    <fieldset class="field add-rep">
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
