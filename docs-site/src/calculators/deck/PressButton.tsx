import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  readonly class: string;
  /** Takes the instant of the press, on the page’s own clock, in milliseconds. */
  readonly onPress: (timeStamp: number) => void;
  /** Whether it takes the focus as it appears. */
  readonly focus?: boolean;
  readonly children: ComponentChildren;
}

/**
 * A button that acts as it is pressed, not as it is let go: the length of a press would be time lost.
 * Space and Enter do the same, and only while it has the focus.
 */
export function PressButton({ class: name, onPress, focus = false, children }: Props) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (focus) button.current?.focus({ preventScroll: true });
  }, []);
  return (
    <button
      ref={button}
      type="button"
      class={name}
      onPointerDown={(event) => {
        if (event.button === 0) onPress(event.timeStamp);
      }}
      onKeyDown={(event) => {
        if (event.key !== ' ' && event.key !== 'Enter') return;
        event.preventDefault();
        if (!event.repeat) onPress(event.timeStamp);
      }}
      onKeyUp={(event) => {
        if (event.key === ' ') event.preventDefault();
      }}
      onClick={(event) => {
        // Nothing was pressed: a screen reader or a voice clicks without a pointer.
        if (event.detail === 0) onPress(event.timeStamp);
      }}
    >
      {children}
    </button>
  );
}
