'use client';

import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/**
 * Whether the page is being printed, so that what is only for paper is built only then. Meanwhile the page has the
 * title of what is printed: it heads the paper, and names the file where it is saved as one.
 */
export function usePrinting(title: string): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    const paper = window.matchMedia('print');
    // The browser prints what stands on the page when it is told.
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    const onMedia = () => (paper.matches ? begin() : end());
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    paper.addEventListener('change', onMedia);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
      paper.removeEventListener('change', onMedia);
    };
  }, []);
  useTitle(isPrinting ? title : null);
  return isPrinting;
}

/** Gives the page a title for as long as there is one. */
function useTitle(title: string | null): void {
  useEffect(() => {
    if (title === null) return;
    const before = document.title;
    document.title = title;
    return () => {
      document.title = before;
    };
  }, [title]);
}
