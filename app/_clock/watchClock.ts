/** Calls back every minute and whenever the page is shown again. */
export function watchClock(onChange: () => void): () => void {
  const timer = setInterval(onChange, 60_000);
  document.addEventListener('visibilitychange', onChange);
  return () => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', onChange);
  };
}
