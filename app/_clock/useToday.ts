'use client';

import { useSyncExternalStore } from 'react';
import { dayOf } from './dayOf';

/** The maker's own day, YYYY-MM-DD; moves on at midnight and whenever the page is shown again. */
export const useToday = (): string => useSyncExternalStore(watchDay, today, () => '1970-01-01');

/** @returns the maker's own day now. */
export const today = (): string => dayOf(new Date());

function watchDay(onChange: () => void): () => void {
  const timer = setInterval(onChange, 60_000);
  document.addEventListener('visibilitychange', onChange);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', onChange);
  };
}
