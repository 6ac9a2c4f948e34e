'use client';

import { useEffect, useRef } from 'react';
import { Button } from './Button';
import styles from './RemovedNote.module.css';

type RemovedNoteProps = Readonly<{
  /** What has just gone; null where nothing has, or where undo would take back something else by now. */
  what: string | null;
  /** An entry is taken back, anything else removed. */
  isEntry?: boolean;
  onUndo: () => void;
}>;

/** Says that something is gone and takes the focus it had, with the way back. */
export function RemovedNote({ what, isEntry = false, onUndo }: RemovedNoteProps) {
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (what !== null) note.current?.focus();
  }, [what]);
  return (
    <div ref={note} className={styles.note} tabIndex={-1} role="status">
      {what !== null && (
        <>
          <p>
            “{what}” is {isEntry ? 'taken back' : 'removed'}.
          </p>
          <Button onPress={onUndo}>{isEntry ? 'Count it again' : 'Bring it back'}</Button>
        </>
      )}
    </div>
  );
}
