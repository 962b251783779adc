import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

const pause = 1000;

/**
 * An error a person should see: only once they paused or left the field, and gone the moment the
 * field reads. `held` is the text it is about.
 */
export function useLateError(
  error: string | null | undefined,
  held: string,
): { readonly shown: string | null; readonly onBlur: () => void } {
  const due = useSignal(false);
  useEffect(() => {
    if (!error) {
      due.value = false;
      return;
    }
    const timer = setTimeout(() => {
      due.value = true;
    }, pause);
    return () => clearTimeout(timer);
  }, [error, held]);
  return {
    shown: error && due.value ? error : null,
    onBlur: () => {
      due.value = Boolean(error);
    },
  };
}
