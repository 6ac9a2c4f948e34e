const HEADINGS = 'h2, h3';

/**
 * A part of a page in which nobody who works by keys is lost: where what held the focus is taken away, the nearest
 * heading round it has the focus. Given as `ref` of the part.
 *
 * @returns what ends it
 */
export function keepsFocus(part: HTMLElement | null): (() => void) | undefined {
  if (part === null) return;
  let held: readonly Element[] = [];
  let isByKeys = false;
  const note = ({ target }: FocusEvent) => {
    if (!(target instanceof Element)) return;
    held = withAround(target, part);
    isByKeys = target.matches(':focus-visible');
  };
  const watch = new MutationObserver(() => {
    const [last] = held;
    if (last === undefined || last.isConnected || document.activeElement !== document.body) return;
    // Who taps stays where the page is.
    nearestHeading(held)?.focus({ preventScroll: !isByKeys });
  });
  part.addEventListener('focusin', note);
  watch.observe(part, { childList: true, subtree: true });
  return () => {
    part.removeEventListener('focusin', note);
    watch.disconnect();
  };
}

// Helpers

/** What holds the focus and all that it lies in, up to the part. */
function withAround(target: Element, part: Element): readonly Element[] {
  const around: Element[] = [];
  for (let at: Element | null = target; at !== null; at = at.parentElement) {
    around.push(at);
    if (at === part) break;
  }
  return around;
}

function nearestHeading(around: readonly Element[]): HTMLElement | null {
  for (const one of around) {
    const heading = one.isConnected ? one.querySelector<HTMLElement>(HEADINGS) : null;
    if (heading === null) continue;
    heading.tabIndex = -1;
    return heading;
  }
  return null;
}
