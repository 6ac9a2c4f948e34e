'use client';

import { useEffect, useRef } from 'react';
import { Button } from './Button';
import styles from './RemovedNote.module.css';

type RemovedNoteProps = Readonly<{
  /** What has just gone; null where nothing has, or where undo would take back something else by now. */
  what: string | null;
  onUndo: () => void;
}>;

/** Says that something is gone and takes the focus it had, with the way back. */
export function RemovedNote({ what, onUndo }: RemovedNoteProps) {
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (what !== null) note.current?.focus();
  }, [what]);
  return (
    <div ref={note} className={styles.note} tabIndex={-1} role="status">
      {what !== null && (
        <>
          <p>“{what}” is removed.</p>
          <Button onPress={onUndo}>Bring it back</Button>
        </>
      )}
    </div>
  );
}
