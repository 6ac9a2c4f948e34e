/** What is typed and kept nowhere else yet, by its key, so that a reload finds it again. */
interface BrowserMemory {
  /** @returns what was remembered, of whatever build; null where nothing was, or the browser forbids it */
  readonly recall: (key: string) => unknown;
  /**
   * @param value null forgets it
   * @returns whether a reload would find it so; what was kept before stays where not
   */
  readonly remember: (key: string, value: object | null) => boolean;
  /** @returns the keys that begin so */
  readonly keysOf: (beginning: string) => readonly string[];
}

/** @param storage asked for late, because merely naming it can throw where it is forbidden */
const browserMemory = (storage: () => Storage): BrowserMemory => ({
  recall(key) {
    try {
      return JSON.parse(storage().getItem(key) ?? 'null');
    } catch {
      // Forbidden, or not ours: there is nothing to go on with.
      return null;
    }
  },
  remember(key, value) {
    try {
      if (value === null) storage().removeItem(key);
      else storage().setItem(key, JSON.stringify(value));
      return true;
    } catch {
      // Full, or forbidden: then nothing was kept either.
      return value === null;
    }
  },
  keysOf(beginning) {
    try {
      return Object.keys(storage()).filter((key) => key.startsWith(beginning));
    } catch {
      // Forbidden: nothing was kept either.
      return [];
    }
  },
});

/** Goes with the tab. */
export const tabMemory = browserMemory(() => sessionStorage);

/** Outlives the tab and the browser: for what takes long to type. Whoever keeps something here says when it goes. */
export const deviceMemory = browserMemory(() => localStorage);
