import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

const pause = 1000;

let touched = false;
if (typeof document !== 'undefined') {
  const touch = () => {
    touched = true;
  };
  for (const kind of ['input', 'click']) {
    document.addEventListener(kind, touch, { once: true, capture: true });
  }
}

/**
 * Says one whole sentence to those who listen, once the typing paused; never what stood there before
 * anybody touched the page.
 */
export function Status({ sentence }: { readonly sentence: string }) {
  const said = useSignal('');
  const first = useRef(sentence);
  useEffect(() => {
    if (!touched && sentence === first.current) return;
    const timer = setTimeout(() => {
      said.value = sentence;
    }, pause);
    return () => clearTimeout(timer);
  }, [sentence]);
  return (
    <p class="sr-only" role="status">
      {said.value}
    </p>
  );
}
