'use client';

import { type RefObject, useLayoutEffect, useState } from 'react';

/** What the type of the page is set to by default. */
const USUAL_PX = 16;

/**
 * How much larger than usual the reader has set all type, 2 at twice the size: a drawing grows with its words, so
 * that figures which do not touch at one size do not touch at another.
 */
export function useTextScale(element: RefObject<Element | null>): number {
  const [scale, setScale] = useState(1);
  useLayoutEffect(() => {
    const measure = () => {
      const px = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      setScale(px > 0 ? px / USUAL_PX : 1);
    };
    measure();
    const watched = element.current;
    if (!watched || typeof ResizeObserver === 'undefined') return;
    // The height of the ruler is set in its type, so it changes with it.
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return scale;
}
