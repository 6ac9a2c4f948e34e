'use client';

import { useEffect, useState } from 'react';

/** @returns the moment, ms since 1970: anew four times a second while something runs, else now and then */
export function useNow(isRunning: boolean): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const look = () => setNow(Date.now());
    look();
    const timer = setInterval(look, isRunning ? 250 : 20_000);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [isRunning]);
  return now;
}
