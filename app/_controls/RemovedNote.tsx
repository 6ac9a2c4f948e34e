'use client';

import { useEffect, useRef } from 'react';
import { Button } from './Button';
import styles from './RemovedNote.module.css';

type RemovedNoteProps = Readonly<{
  /** What has just gone; null where nothing has, or where undo would take back something else by now. */
  what: string | null;
  /** An entry is taken back, what goes out of sight put away, anything else removed. */
  how?: keyof typeof ways | undefined;
  onUndo: () => void;
}>;

const ways = {
  removed: 'Bring it back',
  'taken back': 'Count it again',
  'put away': 'Bring it back',
} as const;

/** Says that something is gone and takes the focus it had, with the way back. */
export function RemovedNote({ what, how = 'removed', onUndo }: RemovedNoteProps) {
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (what !== null) note.current?.focus();
  }, [what]);
  return (
    <div ref={note} className={styles.note} tabIndex={-1} role="status">
      {what !== null && (
        <>
          <p>
            “{what}” is {how}.
          </p>
          <Button
            onPress={() => {
              // The button goes with what it says; the note stays.
              note.current?.focus();
              onUndo();
            }}
          >
            {ways[how]}
          </Button>
        </>
      )}
    </div>
  );
}
