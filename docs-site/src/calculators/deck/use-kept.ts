import { useEffect } from 'preact/hooks';
import { type Fields, queryOf } from '~/ui/address';

/** Writes the address the moment the page is hidden: a call or a lock may be the end of it. */
export function useKept(fields: { readonly value: Fields }, ownPage: boolean): void {
  useEffect(() => {
    if (!ownPage) return;
    const keep = () => {
      if (document.visibilityState === 'visible') return;
      try {
        history.replaceState(history.state, '', `?${queryOf(fields.value)}${location.hash}`);
      } catch {
        // The browser says it is too much; the throttled writing follows.
      }
    };
    document.addEventListener('visibilitychange', keep);
    return () => document.removeEventListener('visibilitychange', keep);
  }, []);
}
