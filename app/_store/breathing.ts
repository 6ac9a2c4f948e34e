/** So long a page may be held before it answers again. */
const HELD_MS = 12;

/** @returns what long work takes between its pieces: now and then it lets the page answer first. */
export function breathing(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < HELD_MS) return;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  };
}
