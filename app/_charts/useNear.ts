'use client';

import { type RefObject, useEffect, useState } from 'react';

/** About a screen ahead. */
const AHEAD = '800px';
/** By then the page stands, and what is heavy may come without being asked for. */
const IDLE_MS = 3000;

/** @returns true once an element is about to come into view, or the page has stood for a while. */
export function useNear(element: RefObject<Element | null>): boolean {
  const [isNear, setIsNear] = useState(false);
  useEffect(() => {
    const watched = element.current;
    if (isNear || watched === null) return;
    const observer =
      typeof IntersectionObserver === 'undefined'
        ? null
        : new IntersectionObserver(
            (entries) => entries.some(({ isIntersecting }) => isIntersecting) && setIsNear(true),
            { rootMargin: AHEAD },
          );
    observer?.observe(watched);
    const idle = setTimeout(() => setIsNear(true), IDLE_MS);
    return () => {
      observer?.disconnect();
      clearTimeout(idle);
    };
  }, [element, isNear]);
  return isNear;
}
