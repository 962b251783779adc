import type { Hundredths } from 'backhalf';
import { gapText } from '~/ui/wording';

interface Props {
  /** Second half less first, as planned. */
  readonly difference: Hundredths;
  /** How much one press changes it. */
  readonly step: Hundredths;
  readonly onDifference: (difference: number) => void;
}

/** What dragging does, by buttons. */
export const Nudges = ({ difference, step, onDifference }: Props) => (
  <fieldset class="field nudges no-print">
    <legend>Second half: drag it in the chart, or</legend>
    <button type="button" class="button quiet" onClick={() => onDifference(difference - step)}>
      {gapText(step)} faster
    </button>
    <button type="button" class="button quiet" onClick={() => onDifference(0)}>
      Even
    </button>
    <button type="button" class="button quiet" onClick={() => onDifference(difference + step)}>
      {gapText(step)} slower
    </button>
  </fieldset>
);
