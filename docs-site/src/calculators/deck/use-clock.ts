import { useEffect, useRef } from 'preact/hooks';

/**
 * Turns an instant on the page’s own clock, which no change of the device’s time can move, into
 * milliseconds since 1970, which outlive a reload. Some devices stop the page’s clock while they
 * sleep, so the two are laid together anew each time the page is seen again.
 */
export function useClock(): (timeStamp?: number) => number {
  const origin = useRef(0);
  useEffect(() => {
    const anchor = () => {
      if (document.visibilityState === 'visible') origin.current = Date.now() - performance.now();
    };
    anchor();
    document.addEventListener('visibilitychange', anchor);
    return () => document.removeEventListener('visibilitychange', anchor);
  }, []);
  return (timeStamp = performance.now()) => origin.current + timeStamp;
}
