const focusable = ':is(input, select, textarea, button, summary, a[href], [role="slider"])';

/**
 * Takes the focus to a field, or to what stands nearest to it: something inside, then whatever holds it. Anything
 * folded away round it is unfolded.
 */
export function focusField(id: string): void {
  for (let at = id; at.includes('-'); at = at.slice(0, at.lastIndexOf('-'))) {
    const found = elementFor(at);
    if (found === null) continue;
    for (let fold = found.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null) {
      if (found.parentElement !== fold || found.tagName !== 'SUMMARY') fold.open = true;
    }
    found.focus();
    return;
  }
}

function elementFor(id: string): HTMLElement | null {
  const own = document.getElementById(id);
  if (own?.matches(focusable)) return own;
  const inside = own?.querySelector<HTMLElement>(focusable);
  return inside ?? document.querySelector<HTMLElement>(`${focusable}[id^="${CSS.escape(id)}-"]`);
}
