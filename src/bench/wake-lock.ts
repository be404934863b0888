import { useEffect } from 'preact/hooks';

/** Keeps the screen on while both hands hold probes. Where the phone refuses, it goes dark as usual. */
export function useWakeLock(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let gone = false;
    const take = async () => {
      if (!('wakeLock' in navigator) || document.visibilityState !== 'visible') return;
      // The phone takes the lock away when the tab is hidden; one that still holds is enough.
      if (lock && !lock.released) return;
      try {
        const taken = await navigator.wakeLock.request('screen');
        if (gone) await taken.release();
        else lock = taken;
      } catch {
        // Battery saver: not ours to overrule.
      }
    };
    void take();
    document.addEventListener('visibilitychange', take);
    return () => {
      gone = true;
      document.removeEventListener('visibilitychange', take);
      void lock?.release();
    };
  }, []);
}
