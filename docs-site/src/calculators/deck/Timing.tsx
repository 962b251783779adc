import { useSignal } from '@preact/signals';
import { hundredths } from 'backhalf';
import { useCallback, useEffect, useRef } from 'preact/hooks';
import type { Form } from '~/ui/use-form';
import type { DeckFields } from './fields';
import type { DeckView } from './model';
import { PressButton } from './PressButton';
import { RunningClock } from './RunningClock';
import { TouchList } from './TouchList';
import { type Tapped, withoutLast, withTap, withWord } from './tapping';
import { touchRows } from './touch-rows';
import type { Tap } from './touches-text';
import { useWakeLock } from './use-wake-lock';

interface Props {
  readonly form: Form<DeckFields>;
  readonly view: DeckView;
  /** Milliseconds since 1970 of an instant on the page’s clock. */
  readonly clock: (timeStamp?: number) => number;
  /** Whether it was started by hand just now. */
  readonly fresh: boolean;
}

const shown = 6;

/** A set being timed: the clock, what the last touches were taken for, and the buttons. */
export function Timing({ form, view, clock, fresh }: Props) {
  const fields = form.fields.value;
  const said = useSignal('');
  const whole = useRef<HTMLDivElement>(null);
  useEffect(() => whole.current?.scrollIntoView({ block: 'start' }), []);
  useWakeLock(true);
  const started = Number(fields.started);
  const elapsed = useCallback(
    (timeStamp?: number) => Math.round((clock(timeStamp) - started) / 10),
    [started],
  );
  // Out of the form, not out of what was drawn: two touches may come between two drawings.
  const change = (make: (touches: string) => Tapped) => {
    const { touches } = form.fields.value;
    const next = make(touches);
    said.value = next.said;
    if (next.touches !== touches) form.set('touches', next.touches);
  };
  const tap = (says: Omit<Tap, 'time'>) => (timeStamp: number) => {
    const time = hundredths(Math.max(elapsed(timeStamp), 1));
    change((touches) => withTap(touches, { time, ...says }));
  };

  const rows = view.reading === null ? [] : touchRows(view.taps, view.reading);
  return (
    <div class="timing" ref={whole}>
      <RunningClock elapsed={elapsed} />
      <TouchList
        label="Last touches, the latest first"
        rows={rows.slice(-shown).reverse()}
        onWord={(index, word) =>
          change((touches) => ({ touches: withWord(touches, index, word), said: '' }))
        }
      />
      <div class="tap-pad">
        <p class="tap-said" role="status">
          {said.value}
        </p>
        <div class={`tap-buttons ${fields.buttons}`}>
          {buttonsFor(fields, view.lanes).map(({ label, says }, i) => (
            <PressButton key={label} class="tap" onPress={tap(says)} focus={fresh && i === 0}>
              {label}
            </PressButton>
          ))}
        </div>
        <div class="tap-side">
          <button type="button" class="button quiet" onClick={() => change(withoutLast)}>
            Undo last tap
          </button>
          <button type="button" class="button quiet" onClick={() => form.set('phase', 'over')}>
            The set is over
          </button>
        </div>
      </div>
    </div>
  );
}

interface TapButton {
  readonly label: string;
  readonly says: Omit<Tap, 'time'>;
}

function buttonsFor(
  { buttons, marks }: DeckFields,
  lanes: readonly number[],
): readonly TapButton[] {
  if (buttons === 'lanes') {
    return lanes.map((lane) => ({ label: `Lane ${lane}`, says: { lane } }));
  }
  if (buttons === 'kinds' && marks !== 'finish') {
    return [
      { label: 'Halfway', says: { mark: 'halfway' } },
      { label: 'Finish', says: { mark: 'finish' } },
    ];
  }
  return [{ label: 'Touch', says: {} }];
}
