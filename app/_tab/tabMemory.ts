/** What is typed in this tab and kept nowhere else yet, so that a reload finds it again; it goes with the tab. */
export const tabMemory = {
  /** @returns what was remembered, of whatever build; null where nothing was, or the browser forbids it */
  recall(key: string): unknown {
    try {
      return JSON.parse(sessionStorage.getItem(key) ?? 'null');
    } catch {
      // Forbidden, or not ours: there is nothing to go on with.
      return null;
    }
  },
  /**
   * @param value null forgets it
   * @returns whether a reload would find it so; what was kept before stays where not
   */
  remember(key: string, value: object | null): boolean {
    try {
      if (value === null) sessionStorage.removeItem(key);
      else sessionStorage.setItem(key, JSON.stringify(value));
      return true;
    } catch {
      // Full, or forbidden: then nothing was kept either.
      return value === null;
    }
  },
  /** @returns the keys that begin so */
  keysOf(beginning: string): readonly string[] {
    try {
      return Object.keys(sessionStorage).filter((key) => key.startsWith(beginning));
    } catch {
      // Forbidden: nothing was kept either.
      return [];
    }
  },
};
