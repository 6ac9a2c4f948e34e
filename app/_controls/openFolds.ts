const KEY = 'pressminute-open-folds';
/** Folds that were opened first are forgotten first. */
const MOST = 400;

/** Which folds stand open on this device; kept apart from the documents, because looking is no edit. */
export const openFolds = {
  isOpen: (id: string): boolean => read().includes(id),
  remember(id: string, open: boolean): void {
    const others = read().filter((one) => one !== id);
    try {
      localStorage.setItem(KEY, JSON.stringify((open ? [...others, id] : others).slice(-MOST)));
    } catch {
      // Full, or forbidden by the browser: then a fold is closed again at the next visit.
    }
  },
};

// Helpers

function read(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.filter((one) => typeof one === 'string') : [];
  } catch {
    // Forbidden, or no list of ours.
    return [];
  }
}
