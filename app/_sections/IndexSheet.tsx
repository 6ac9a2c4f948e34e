'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
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

/**
 * The whole index over the lower part of the screen. The browser's own dialog keeps the focus inside, closes on Escape
 * and gives the focus back to the button that opened it.
 */
export function IndexSheet<Id extends string>(props: IndexSheetProps<Id>) {
  const { label, sections, states, isOpen, onClose } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (isOpen && dialog.current?.open === false) dialog.current.showModal();
  }, [isOpen]);
  useEffect(() => {
    // What lies around the sheet belongs to the dialog itself. Escape does the same for the keyboard.
    const sheet = dialog.current;
    const closeAround = (event: Event) => {
      if (event.target === sheet) sheet?.close();
    };
    sheet?.addEventListener('click', closeAround);
    return () => sheet?.removeEventListener('click', closeAround);
  }, []);
  const go = (id: string) => {
    // First closed: the focus goes back to where it was, and only then on to the section.
    dialog.current?.close();
    goToSection(id);
  };
  return (
    <dialog className={styles.sheet} ref={dialog} aria-label={label} onClose={onClose}>
      {isOpen && (
        <div className={styles.room}>
          <ol className={styles.list}>
            {sections.map(({ id, name }, index) => (
              <li key={id}>
                <a
                  className={styles.link}
                  href={`#${id}`}
                  onClick={(event) => {
                    event.preventDefault();
                    go(id);
                  }}
                >
                  <span className={styles.numeral}>{index + 1}</span>
                  <span className={styles.name}>{name}</span>{' '}
                  <span className={classes(styles.state, styles[states[id].tone])}>{states[id].text}</span>
                </a>
              </li>
            ))}
          </ol>
          <div className={styles.close}>
            <Button kind="strong" onPress={() => dialog.current?.close()}>
              Close
            </Button>
          </div>
        </div>
      )}
    </dialog>
  );
}
