import type { Hundredths } from 'backhalf';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { slowerOrFaster } from '~/ui/wording';
import { nudgeOf } from './drawing';

interface Props {
  readonly goal: Hundredths;
  /** Second half less first, as planned. */
  readonly difference: Hundredths;
  /** How far off the mean the chart reaches, a ratio, and how many pixels that is. */
  readonly limit: number;
  readonly pixels: number;
  /** Where it stands: per cent of the width, and pixels. */
  readonly x: number;
  readonly y: number;
  readonly onDifference: (difference: number) => void;
  /** While it is held, the chart's scale must not move under the finger. */
  readonly onHold: (holds: boolean) => void;
}

const tenth = 10; // hundredths: what a thumb can aim at

/** Drags the second half up or down; a slider for the keyboard. Buttons beside it do the same. */
export function Handle(props: Props) {
  const { goal, difference, limit, pixels, x, y, onDifference, onHold } = props;
  const grip = useRef<{ readonly at: number; readonly difference: number } | null>(null);
  const most = Math.floor((goal * Math.min(limit, 0.1)) / tenth) * tenth;
  const set = (to: number) => {
    const whole = Math.round(to / tenth) * tenth;
    onDifference(Math.min(Math.max(whole, -most), most));
  };
  const release = () => {
    grip.current = null;
    onHold(false);
  };
  const nudge = nudgeOf(goal);
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: difference - tenth,
    ArrowRight: difference - tenth,
    ArrowDown: difference + tenth,
    ArrowLeft: difference + tenth,
    PageUp: difference - nudge * 5,
    PageDown: difference + nudge * 5,
    Home: most,
    End: -most,
  };

  // Set by script: the site's policy takes no style attributes, and without a script it cannot move.
  const knob = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (knob.current === null) return;
    knob.current.style.left = `${x}%`;
    knob.current.style.top = `${y}px`;
    knob.current.style.visibility = 'visible';
  }, [x, y]);

  return (
    <div
      ref={knob}
      class="handle"
      role="slider"
      tabIndex={0}
      aria-label="Second half against the first"
      aria-orientation="vertical"
      aria-valuemin={-most / 100}
      aria-valuemax={most / 100}
      aria-valuenow={-difference / 100}
      aria-valuetext={slowerOrFaster(difference)}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { at: event.clientY, difference };
        onHold(true);
      }}
      onPointerMove={(event) => {
        if (grip.current === null) return;
        const moved = ((event.clientY - grip.current.at) / pixels) * limit;
        set(grip.current.difference + moved * goal);
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onKeyDown={(event) => {
        const to = steps[event.key];
        if (to === undefined) return;
        event.preventDefault();
        set(to);
      }}
    />
  );
}
