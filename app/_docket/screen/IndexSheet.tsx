'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { docketSections } from '@/app/_words/docket/docketSections';
import type { SectionStates } from '@/app/_words/docket/sectionStates';
import { goToSection } from './goToSection';
import styles from './IndexSheet.module.css';

type IndexSheetProps = Readonly<{ isOpen: boolean; onClose: () => void; states: SectionStates }>;

/**
 * The whole index over the lower part of the screen. The browser's own dialog keeps the focus inside, closes on Escape
 * and gives the focus back to the button that opened it.
 */
export function IndexSheet({ isOpen, onClose, states }: IndexSheetProps) {
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
    <dialog className={styles.sheet} ref={dialog} aria-label="Sections of this job" onClose={onClose}>
      {isOpen && (
        <div className={styles.room}>
          <ol className={styles.list}>
            {docketSections.map(({ id, name }, index) => (
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
