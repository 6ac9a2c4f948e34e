'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { saveBlob } from '@/app/_files/saveBlob';
import { canShare, shareFile } from '@/app/_files/shareFile';
import styles from './FileActions.module.css';

type FileActionsProps = Readonly<{
  name: string;
  /** The file as it is; null while it is not there. */
  content: Blob | null;
  /** What is spoken of it where the words on a button do not say which paper. */
  spoken: string;
  blockedBy?: string | undefined;
  /** What the button that saves it says. */
  saving?: string;
}>;

/** What can be done with the file of a paper: sent where this browser can, saved everywhere. */
export function FileActions({ name, content, spoken, blockedBy, saving = 'Save' }: FileActionsProps) {
  const [told, setTold] = useState('');
  // Browsers take no request to share that comes long after the tap: the file is there before it.
  const file = useMemo(
    () => (content === null ? null : new File([content], name, { type: 'application/pdf' })),
    [content, name],
  );
  const missing = file === null ? (blockedBy ?? 'The file is being read.') : undefined;
  const save = () => file !== null && saveBlob(name, file);
  const send = async () => {
    if (file === null) return;
    const outcome = await shareFile(file);
    if (outcome === 'cannot') save();
    setTold(outcome === 'cannot' ? 'This browser did not take it to another app, so it was saved.' : '');
  };
  return (
    <>
      {file !== null && canShare(file) && (
        <Button spoken={`Send ${spoken}`} onPress={() => void send()}>
          Send
        </Button>
      )}
      <Button kind="quiet" spoken={`${saving} ${spoken}`} blockedBy={missing} onPress={save}>
        {saving}
      </Button>
      <span className={styles.told} role="status">
        {told}
      </span>
    </>
  );
}
