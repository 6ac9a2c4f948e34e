/** What a reader does who is no longer waiting to be led somewhere. */
const movesOn = ['wheel', 'touchmove', 'keydown', 'pointerdown', 'click'] as const;

/** Seen on the way down: the press that leads here is on its way up already. */
const CAPTURE = { capture: true, passive: true } as const;

/** Only one thing can be held. */
let letGo: () => void = () => undefined;

/**
 * Keeps in its place what somebody was led to, while parts of the page are still coming and those above it grow, until
 * they do something else.
 *
 * @param lead brings it into sight, if it is there by now; called again with whatever moves it
 * @returns what ends it
 */
export function holdInSight(lead: () => void): () => void {
  letGo();
  let ledTo = { y: 0, pageHeight: 0 };
  const look = () => ({ y: window.scrollY, pageHeight: document.documentElement.scrollHeight });
  const put = () => {
    lead();
    ledTo = look();
  };
  // Scrolled while nothing grew: by the reader, also by the bar at the side, which tells of no press.
  const scrolled = () => {
    const { y, pageHeight } = look();
    if (pageHeight === ledTo.pageHeight && Math.abs(y - ledTo.y) > 1) stop();
  };
  const arrivals = new MutationObserver(put);
  const growth = typeof ResizeObserver === 'undefined' ? null : new ResizeObserver(put);
  const stop = () => {
    arrivals.disconnect();
    growth?.disconnect();
    window.removeEventListener('scroll', scrolled);
    for (const event of movesOn) window.removeEventListener(event, stop, CAPTURE);
  };
  letGo = stop;
  put();
  arrivals.observe(document.body, { childList: true, subtree: true });
  growth?.observe(document.body);
  window.addEventListener('scroll', scrolled, { passive: true });
  for (const event of movesOn) window.addEventListener(event, stop, CAPTURE);
  return stop;
}
