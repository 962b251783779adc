import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

const pause = 1000;

/** Says one whole sentence to those who listen, once the typing paused; never the first one. */
export function Status({ sentence }: { readonly sentence: string }) {
  const said = useSignal('');
  const first = useRef(sentence);
  useEffect(() => {
    if (sentence === first.current && said.value === '') return;
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
