const KEY = 'pressminute-device-name';

/** As many letters fit into a line of a copy's preview. */
export const LONGEST_DEVICE_NAME = 40;

const listeners = new Set<() => void>();

/** What the maker calls this device; kept on it alone, and never part of what a copy brings to another. */
export const deviceName = {
  subscribe(listener: () => void): () => void {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
  /** @returns an empty text where it has no name. */
  recall(): string {
    try {
      return localStorage.getItem(KEY) ?? '';
    } catch {
      // Some browsers forbid it; then the device goes by its letter.
      return '';
    }
  },
  /** @returns whether the browser kept it. */
  remember(name: string): boolean {
    try {
      localStorage.setItem(KEY, name.trim());
      return true;
    } catch {
      // As above; the field tells it.
      return false;
    } finally {
      for (const listener of listeners) listener();
    }
  },
};
