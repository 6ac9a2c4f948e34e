'use client';

import { useEffect } from 'react';
import { useHash } from '@/app/_controls/useHash';
import { goToSection } from '@/app/_sections/goToSection';
import { holdInSight } from '@/app/_sections/holdInSight';
import { docketSections } from '@/app/_words/docket/docketSections';

/**
 * Leads to the section or the field that the address names, once it has come: the sections of figures are fetched
 * while the first sums are made. Whoever has gone elsewhere in the meantime is left there.
 */
export function useArrival(show: (fieldId: string) => void): void {
  const hash = useHash();
  useEffect(() => {
    if (docketSections.some(({ id }) => id === hash)) return goToSection(hash);
    if (!hash.startsWith('job-')) return;
    let isShown = false;
    return holdInSight(() => {
      const field = document.getElementById(hash);
      if (field === null) return;
      if (isShown) return field.scrollIntoView({ block: 'nearest' });
      isShown = true;
      show(hash);
    });
  }, [hash, show]);
}
