'use client';

import { type ReactNode, useCallback, useRef } from 'react';
import styles from './IndexedSections.module.css';
import { IndexSheet } from './IndexSheet';
import { SectionIndex } from './SectionIndex';
import type { Section, SectionState } from './sections';
import { useCurrentSection } from './useCurrentSection';

type IndexedSectionsProps<Id extends string> = Readonly<{
  /** Of what they are the sections, for a screen reader: “Sections of this job”. */
  label: string;
  /** The same list for as long as the screen stands. */
  sections: readonly [Section<Id>, ...Section<Id>[]];
  states: Readonly<Record<Id, SectionState>>;
  /** What can be done with the whole, at the foot of the rail. */
  foot?: ReactNode;
  /** Whether a price bar sticks to the top above it. */
  isUnderBar: boolean;
  isSheetOpen: boolean;
  onSheet: (isOpen: boolean) => void;
  children: ReactNode;
}>;

/** Sections of a long screen with their index beside them; on a phone it opens as a sheet. */
export function IndexedSections<Id extends string>(props: IndexedSectionsProps<Id>) {
  const { label, sections, states, foot, isUnderBar, isSheetOpen, onSheet, children } = props;
  const content = useRef<HTMLDivElement>(null);
  const current = useCurrentSection(sections, content);
  const openSheet = useCallback(() => onSheet(true), [onSheet]);
  return (
    <>
      <div className={styles.frame} data-index-beside={isUnderBar ? undefined : true}>
        <SectionIndex {...{ label, sections, states, current, foot }} onOpenSheet={openSheet} />
        <div className={styles.content} ref={content}>
          {children}
        </div>
      </div>
      <IndexSheet {...{ label, sections, states }} isOpen={isSheetOpen} onClose={() => onSheet(false)} />
    </>
  );
}
