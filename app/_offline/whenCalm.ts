/** For so long nothing more was fetched: on a slow line one large file takes a second or two. */
const QUIET_MS = 3_000;
const LOOK_EVERY_MS = 500;

/**
 * Waits until the page stands with all its figures and the line is quiet.
 *
 * @returns gives up waiting
 */
export function whenCalm(then: () => void): () => void {
  let lastFetched = performance.now();
  const observer = new PerformanceObserver(() => {
    lastFetched = performance.now();
  });
  observer.observe({ type: 'resource' });
  const timer = setInterval(() => {
    const isBusy = document.querySelector('main [aria-busy="true"]') !== null;
    if (document.readyState !== 'complete' || isBusy) return;
    if (performance.now() - lastFetched < QUIET_MS) return;
    stop();
    then();
  }, LOOK_EVERY_MS);
  function stop(): void {
    observer.disconnect();
    clearInterval(timer);
  }
  return stop;
}
