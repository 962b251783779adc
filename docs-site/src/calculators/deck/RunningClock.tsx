import { useSignal } from '@preact/signals';
import { formatTime, hundredths } from 'backhalf';
import { useEffect } from 'preact/hooks';

interface Props {
  /** Hundredths since the first swimmer left, now. */
  readonly elapsed: () => number;
}

/** The time since the first swimmer left. Not announced: nobody wants to hear it ten times a second. */
export function RunningClock({ elapsed }: Props) {
  const now = useSignal(0);
  useEffect(() => {
    const tick = () => {
      now.value = Math.max(elapsed(), 0);
    };
    tick();
    const timer = setInterval(tick, 100);
    return () => clearInterval(timer);
  }, [elapsed]);
  return (
    <p class="running-clock" role="timer" aria-live="off">
      <span class="sr-only">Time since the start: </span>
      {formatTime(hundredths(now.value), { decimals: 1 })}
    </p>
  );
}
