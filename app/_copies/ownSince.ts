import { today } from '@/app/_clock/useToday';

const KEY = 'pressminute-own-since';

/** @returns the day on which something of the maker's own was first seen here; noted when it is seen first. */
export function ownSince(): string {
  const day = today();
  try {
    const noted = localStorage.getItem(KEY);
    if (noted !== null && /^\d{4}-\d{2}-\d{2}$/.test(noted)) return noted;
    localStorage.setItem(KEY, day);
  } catch {
    // Where the browser remembers nothing, everything began today, and nobody is reminded too early.
  }
  return day;
}
