'use client';

import { type RefObject, useEffect, useState } from 'react';
import { docketSections, type SectionId } from '@/app/_words/docket/docketSections';

/** A section is current from where its head passes the upper third of the screen. */
const LINE = 0.3;
const BAND = `-${LINE * 100}% 0px -${99 - LINE * 100}% 0px`;

/** @returns the section that is being read, found as the page scrolls; sections may come later. */
export function useCurrentSection(content: RefObject<HTMLElement | null>): SectionId {
  const [current, setCurrent] = useState<SectionId>('the-job');
  useEffect(() => {
    const room = content.current;
    if (room === null || typeof IntersectionObserver === 'undefined') return;
    const inBand = new Set<string>();
    const observer = new IntersectionObserver(
      (entries) => {
        for (const { isIntersecting, target } of entries) {
          if (isIntersecting) inBand.add(target.id);
          else inBand.delete(target.id);
        }
        const [first] = docketSections;
        const found = docketSections.findLast(({ id }) => inBand.has(id));
        if (found !== undefined) setCurrent(found.id);
        // After a jump to the top no section has reached the band yet; between two of them the last one stays.
        else if (isBelow(document.getElementById(first.id))) setCurrent(first.id);
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
    // At any depth: they are drawn in turn, and fetched together.
    arrivals.observe(room, { childList: true, subtree: true });
    return () => {
      arrivals.disconnect();
      observer.disconnect();
    };
  }, [content]);
  return current;
}

// Helpers

const isBelow = (section: Element | null): boolean =>
  section !== null && section.getBoundingClientRect().top > window.innerHeight * LINE;
