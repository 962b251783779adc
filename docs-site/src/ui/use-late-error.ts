import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

const pause = 1000;
/** On leaving, a click on what comes next must land before the message moves the page. */
const afterLeaving = 200;

/**
 * An error a person should see: only once they paused or left the field, and gone the moment the
 * field reads. `held` is the text it is about.
 */
export function useLateError(
  error: string | null | undefined,
  held: string,
): { readonly shown: string | null; readonly onBlur: () => void } {
  const due = useSignal(false);
  const left = useSignal(false);
  useEffect(() => {
    if (!error) {
      due.value = false;
      left.value = false;
      return;
    }
    const timer = setTimeout(
      () => {
        due.value = true;
      },
      left.value ? afterLeaving : pause,
    );
    return () => clearTimeout(timer);
  }, [error, held, left.value]);
  return {
    shown: error && due.value ? error : null,
    onBlur: () => {
      left.value = true;
    },
  };
}
