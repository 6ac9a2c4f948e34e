export interface PageEvents {
  /** The page is about to go, or out of sight, from where it may go without a word. */
  readonly leaving: () => void;
  /** The focus leaves what it was in. */
  readonly fieldLeft: () => void;
  /** The page comes back into view. */
  readonly shown: () => void;
}

/** Calls back at what happens to the page; gives back how to stop. */
export function watchPage(on: PageEvents): () => void {
  if (typeof window === 'undefined') return () => undefined;
  const stop = new AbortController();
  const { signal } = stop;
  const seen = () => (document.visibilityState === 'hidden' ? on.leaving() : on.shown());
  document.addEventListener('visibilitychange', seen, { signal });
  document.addEventListener('focusout', on.fieldLeft, { signal });
  window.addEventListener('pagehide', on.leaving, { signal });
  window.addEventListener('pageshow', on.shown, { signal });
  return () => stop.abort();
}
