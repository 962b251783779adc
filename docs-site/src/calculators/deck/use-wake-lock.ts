import { useEffect } from 'preact/hooks';

/** Keeps the screen awake while it is wanted; where a browser will not, all else works the same. */
export function useWakeLock(wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return;
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const ask = async () => {
      try {
        if (document.visibilityState === 'hidden') return;
        lock = await navigator.wakeLock.request('screen');
        if (over) await lock.release();
      } catch {
        // No wake lock here, or the battery is low: the screen dims as it always would.
      }
    };
    const release = async () => {
      over = true;
      try {
        await lock?.release();
      } catch {
        // It was let go already.
      }
    };
    ask();
    document.addEventListener('visibilitychange', ask); // a browser lets go when the page is hidden
    return () => {
      document.removeEventListener('visibilitychange', ask);
      release();
    };
  }, [wanted]);
}
