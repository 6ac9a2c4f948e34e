'use client';

import { Button } from '@/app/_controls/Button';
import type { LostStore } from '@/app/_store/lostStore';
import { lostStoreWords } from '@/app/_words/store/lostStoreWords';
import styles from './OverwrittenNote.module.css';

type LostStoreNoteProps = Readonly<{ lost: LostStore | null; onSeen: () => void }>;

/** Says that the store was deleted under the page, and what that cost. */
export function LostStoreNote({ lost, onSeen }: LostStoreNoteProps) {
  return (
    <div role="status">
      {lost !== null && (
        <div className={styles.note}>
          <p>{lostStoreWords(lost)}</p>
          <Button onPress={onSeen}>I have seen it</Button>
        </div>
      )}
    </div>
  );
}
