'use client';

import { type RefObject, useEffect, useState } from 'react';
import type { Section } from './sections';

/** A section is current from where its head passes the upper third of the screen. */
const LINE = 0.3;
const BAND = `-${LINE * 100}% 0px -${99 - LINE * 100}% 0px`;

/**
 * Finds the section that is being read as the page scrolls; sections may come later.
 *
 * @param sections the same list for as long as the screen stands
 */
export function useCurrentSection<Id extends string>(
  sections: readonly [Section<Id>, ...Section<Id>[]],
  content: RefObject<HTMLElement | null>,
): Id {
  const [current, setCurrent] = useState(sections[0].id);
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
        const [first] = sections;
        const found = sections.findLast(({ id }) => inBand.has(id));
        if (found !== undefined) setCurrent(found.id);
        // After a jump to the top no section has reached the band yet; between two of them the last one stays.
        else if (isBelow(document.getElementById(first.id))) setCurrent(first.id);
      },
      { rootMargin: BAND },
    );
    const observed = new Set<Element>();
    const observe = () => {
      for (const { id } of sections) {
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
  }, [sections, content]);
  return current;
}

// Helpers

const isBelow = (section: Element | null): boolean =>
  section !== null && section.getBoundingClientRect().top > window.innerHeight * LINE;
