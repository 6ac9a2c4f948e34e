'use client';

import { type RefObject, useEffect, useState } from 'react';

/** Whether an element has been scrolled away; false until the browser has said so. */
export function useOutOfSight(element: RefObject<Element | null>): boolean {
  const [isOut, setOut] = useState(false);
  // The element is another one after each change of what stands there, so it is looked up after each.
  useEffect(() => {
    const watched = element.current;
    if (watched === null || typeof IntersectionObserver === 'undefined') return;
    const observer = new IntersectionObserver(([entry]) => setOut(entry?.isIntersecting === false));
    observer.observe(watched);
    return () => observer.disconnect();
  });
  return isOut;
}
