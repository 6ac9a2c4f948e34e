'use client';

import { type RefObject, useEffect, useState } from 'react';

/** So far from the edge of the screen a drawing is begun, that it stands when it is reached. */
const AHEAD = '120%';

/** Whether an element has come near the screen; stays true from then on, and is where nothing can tell. */
export function useNear(element: RefObject<Element | null>): boolean {
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const watched = element.current;
    if (isNear || watched === null) return;
    if (typeof IntersectionObserver === 'undefined') return setNear(true);
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: `${AHEAD} 0px` },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element, isNear]);
  return isNear;
}
