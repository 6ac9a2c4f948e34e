'use client';

import { useSyncExternalStore } from 'react';

/** The maker's own day, YYYY-MM-DD; moves on at midnight and whenever the page is shown again. */
export const useToday = (): string => useSyncExternalStore(watchDay, today, () => '1970-01-01');

export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function watchDay(onChange: () => void): () => void {
  const timer = setInterval(onChange, 60_000);
  document.addEventListener('visibilitychange', onChange);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', onChange);
  };
}
