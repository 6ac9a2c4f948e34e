'use client';

import { useEffect, useState } from 'react';

/** `refused` where the device saves power just now, or took back what it gave; it is asked again whenever the page is shown. */
export type WakeState = 'asking' | 'awake' | 'refused' | 'unknown';

/** Keeps the screen awake while what asks for it is shown; a browser lets go of it whenever the page is hidden. */
export function useWakeLock(): WakeState {
  const [state, setState] = useState<WakeState>('asking');
  useEffect(() => {
    // Older browsers, and pages that did not come over a safe way, have none.
    const locks: WakeLock | undefined = navigator.wakeLock;
    if (locks === undefined) {
      setState('unknown');
      return;
    }
    let isLeft = false;
    let isAsking = false;
    let held: WakeLockSentinel | null = null;
    const onReleased = () => {
      if (!isLeft) setState('refused');
    };
    const ask = async () => {
      const isHeld = isAsking || (held !== null && !held.released);
      if (document.visibilityState !== 'visible' || isHeld) return;
      isAsking = true;
      try {
        const lock = await locks.request('screen');
        if (isLeft) return void (await lock.release());
        held = lock;
        lock.addEventListener('release', onReleased);
        setState('awake');
      } catch {
        if (!isLeft) setState('refused');
      } finally {
        isAsking = false;
      }
    };
    const onShown = () => void ask();
    onShown();
    document.addEventListener('visibilitychange', onShown);
    return () => {
      isLeft = true;
      document.removeEventListener('visibilitychange', onShown);
      void held?.release();
    };
  }, []);
  return state;
}
