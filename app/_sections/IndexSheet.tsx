'use client';

import { BottomSheet } from '@/app/_controls/BottomSheet';
import { classes } from '@/app/_controls/classes';
import { goToSection } from './goToSection';
import styles from './IndexSheet.module.css';
import type { Section, SectionState } from './sections';

type IndexSheetProps<Id extends string> = Readonly<{
  /** Of what they are the sections, for a screen reader: “Sections of this job”. */
  label: string;
  sections: readonly Section<Id>[];
  states: Readonly<Record<Id, SectionState>>;
  isOpen: boolean;
  onClose: () => void;
}>;

/** The whole index over the lower part of the screen. */
export function IndexSheet<Id extends string>(props: IndexSheetProps<Id>) {
  const { label, sections, states, isOpen, onClose } = props;
  if (!isOpen) return null;
  return (
    <BottomSheet {...{ label, onClose }}>
      {(close) => (
        <ol className={styles.list}>
          {sections.map(({ id, name }, index) => (
            <li key={id}>
              <a
                className={styles.link}
                href={`#${id}`}
                onClick={(event) => {
                  event.preventDefault();
                  // First closed: the focus goes back to where it was, and only then on to the section.
                  close();
                  goToSection(id);
                }}
              >
                <span className={styles.numeral}>{index + 1}</span>
                <span className={styles.name}>{name}</span>{' '}
                <span className={classes(styles.state, styles[states[id].tone])}>{states[id].text}</span>
              </a>
            </li>
          ))}
        </ol>
      )}
    </BottomSheet>
  );
}
