'use client';

import { type RefObject, useLayoutEffect, useState } from 'react';

/** The width of an element in px, known before the first paint and followed as it changes. */
export function useWidth(element: RefObject<Element | null>, firstGuessPx: number): number {
  const [widthPx, setWidthPx] = useState(firstGuessPx);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched || typeof ResizeObserver === 'undefined') return;
    const measure = () => setWidthPx(watched.getBoundingClientRect().width || firstGuessPx);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element, firstGuessPx]);
  return widthPx;
}
