'use client';

import { type RefObject, useEffect, useState } from 'react';
import { docketSections, type SectionId } from '@/app/_words/docket/docketSections';

/** A section is current from where its head passes the upper third of the screen. */
const BAND = '-30% 0px -69% 0px';

/** @returns the section that is being read, found as the page scrolls; sections may come later. */
export function useCurrentSection(content: RefObject<HTMLElement | null>): SectionId {
  const [current, setCurrent] = useState<SectionId>('the-job');
  useEffect(() => {
    const room = content.current;
    if (room === null || typeof IntersectionObserver === 'undefined') return;
    const observer = new IntersectionObserver(
      (entries) => {
        const entered = entries.filter(({ isIntersecting }) => isIntersecting).at(-1);
        const found = docketSections.find(({ id }) => id === entered?.target.id);
        if (found !== undefined) setCurrent(found.id);
      },
      { rootMargin: BAND },
    );
    const observed = new Set<Element>();
    const observe = () => {
      for (const { id } of docketSections) {
        const section = document.getElementById(id);
        if (section === null || observed.has(section)) continue;
        observed.add(section);
        observer.observe(section);
      }
    };
    observe();
    const arrivals = new MutationObserver(observe);
    for (const part of [room, ...room.children]) arrivals.observe(part, { childList: true });
    return () => {
      arrivals.disconnect();
      observer.disconnect();
    };
  }, [content]);
  return current;
}
