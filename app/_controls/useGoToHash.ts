'use client';

import { useEffect } from 'react';
import { useHash } from './useHash';

const focusable = ':is(input, select, textarea, button, a[href])';

/**
 * Goes to the field the address names, or to what stands nearest to it. The browser cannot: when the page arrives,
 * the documents are not open yet and the field is not there.
 */
export function useGoToHash(): void {
  const hash = useHash();
  useEffect(() => goNear(hash), [hash]);
}

/**
 * The same for a part of the page that comes later: goes there once it is here, where it holds what the address names.
 *
 * @param part null until it is here
 */
export function useGoToHashIn(part: HTMLElement | null): void {
  const hash = useHash();
  useEffect(() => {
    const named = hash === '' ? null : document.getElementById(hash);
    if (part !== null && named !== null && part.contains(named)) goNear(hash);
  }, [part, hash]);
}

// Helpers

function goNear(hash: string): void {
  for (let at = hash; at !== ''; at = at.slice(0, Math.max(0, at.lastIndexOf('-')))) {
    const found = document.getElementById(at);
    if (found === null) continue;
    const field = found.matches(focusable) ? found : found.querySelector<HTMLElement>(focusable);
    found.scrollIntoView({ block: field === found ? 'center' : 'start' });
    field?.focus({ preventScroll: true });
    return;
  }
}
