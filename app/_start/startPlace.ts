const KEY = 'pressminute-start';

/** How far the walk through a new workshop is, in this tab, so that a reload goes on where it was. */
export const startPlace = {
  recall(): number | null {
    try {
      const kept = sessionStorage.getItem(KEY);
      return kept !== null && /^\d{1,2}$/.test(kept) ? Number(kept) : null;
    } catch {
      // Some browsers forbid it; then a reload asks again.
      return null;
    }
  },
  remember(place: number | null): void {
    try {
      if (place === null) sessionStorage.removeItem(KEY);
      else sessionStorage.setItem(KEY, String(place));
    } catch {
      // As above.
    }
  },
};
