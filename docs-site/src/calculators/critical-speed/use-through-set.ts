import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Follow } from './through-set';

/** Holds the answer's place, so that nothing below it moves when it comes. */
export const awaited: Follow = () => ({
  forms: ['Linear', 'Differential', 'Integral'].map((name) => ({ name, trace: '…' })),
  error: null,
});

const lost: Follow = () => ({
  forms: null,
  error: 'What follows a set could not be fetched; load the page again once there is a network.',
});

/**
 * What follows the reserve through a set. It reads the whole set notation and weighs as much as
 * half the rest, so it is fetched once a set is there.
 */
export function useThroughSet(wanted: boolean): Follow {
  const follow = useSignal(awaited);
  useEffect(() => {
    if (!wanted || follow.value !== awaited) return;
    const take = (found: Follow) => {
      follow.value = found;
    };
    import('./through-set').then(({ throughSet }) => take(throughSet)).catch(() => take(lost));
  }, [wanted]);
  return follow.value;
}
