'use client';

import { useSyncExternalStore } from 'react';

const USUAL_PX = 16;

/** @returns the size of the page's own letter, px, which browsers let people set. */
export const useLetterPx = (): number =>
  useSyncExternalStore(
    // Browsers tell of no change; a drawing that is made anew reads it again.
    () => () => undefined,
    () => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || USUAL_PX,
    () => USUAL_PX,
  );
