import { useRef } from 'preact/hooks';

interface Props {
  /** Takes the instant of the press, on the page’s own clock, in milliseconds. */
  readonly onStart: (timeStamp: number) => void;
}

/**
 * Starts the clock at the press, but only once it was let go on the button: a thumb that scrolls past
 * must start nothing.
 */
export function StartButton({ onStart }: Props) {
  const pressed = useRef<number | null>(null);
  return (
    <button
      type="button"
      class="tap start"
      onPointerDown={(event) => {
        pressed.current = event.timeStamp;
      }}
      onKeyDown={(event) => {
        if (!event.repeat) pressed.current = event.timeStamp;
      }}
      onClick={(event) => {
        onStart(pressed.current ?? event.timeStamp);
        pressed.current = null;
      }}
    >
      Start
      <span>as the first swimmer leaves</span>
    </button>
  );
}
