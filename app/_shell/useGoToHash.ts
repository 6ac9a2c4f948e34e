'use client';

import { useEffect } from 'react';
import { useHash } from './useHash';

/**
 * Goes to the element the address names. The browser cannot: when the page arrives, the documents are not open
 * yet and the element is not there.
 */
export function useGoToHash(): void {
  const hash = useHash();
  useEffect(() => {
    const target = hash === '' ? null : document.getElementById(hash);
    if (target === null) return;
    target.scrollIntoView({ block: 'center' });
    target.focus({ preventScroll: true });
  }, [hash]);
}
