'use client';

import { type RefObject, useEffect } from 'react';
import { useHash } from '@/app/_controls/useHash';
import { docketSections } from '@/app/_words/docket/docketSections';
import { goToSection } from './goToSection';

/** What a reader does who is no longer waiting to be led somewhere. */
const movesOn = ['wheel', 'touchmove', 'keydown', 'pointerdown'] as const;

/**
 * Leads to the section or the field that the address names, once it has come: the sections of figures are fetched
 * while the first sums are made. Whoever has gone elsewhere in the meantime is left there.
 */
export function useArrival(content: RefObject<HTMLElement | null>, show: (fieldId: string) => void): void {
  const hash = useHash();
  useEffect(() => {
    const room = content.current;
    if (room === null || hash === '') return;
    const arrive = (): boolean => {
      if (docketSections.some(({ id }) => id === hash)) return goToSection(hash);
      if (!hash.startsWith('job-') || document.getElementById(hash) === null) return false;
      show(hash);
      return true;
    };
    if (arrive()) return;
    const arrivals = new MutationObserver(() => {
      if (arrive()) stop();
    });
    const stop = () => {
      arrivals.disconnect();
      for (const event of movesOn) window.removeEventListener(event, stop);
    };
    arrivals.observe(room, { childList: true, subtree: true });
    for (const event of movesOn) window.addEventListener(event, stop, { passive: true });
    return stop;
  }, [content, hash, show]);
}
