/** Calls back when the page is about to be left and when it comes back into view; gives back how to stop. */
export const watchPage = (on: { readonly leaving: () => void; readonly shown: () => void }): (() => void) => {
  if (typeof window === 'undefined') return () => undefined;
  const stop = new AbortController();
  const { signal } = stop;
  const seen = () => (document.visibilityState === 'hidden' ? on.leaving() : on.shown());
  document.addEventListener('visibilitychange', seen, { signal });
  window.addEventListener('pagehide', on.leaving, { signal });
  window.addEventListener('pageshow', on.shown, { signal });
  return () => stop.abort();
};
