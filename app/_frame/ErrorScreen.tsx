'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { lazy } from '@/app/_network/lazy';
import styles from './ErrorScreen.module.css';

/** The documents are no part of the first script, and every page has this screen. */
const lazySaving = lazy(() => import('@/app/_keeping/saveWorkshop').then(({ saveWorkshop }) => saveWorkshop));

/** What is said where a screen failed: that nothing is lost, how to go on, and a copy to be sure. */
export function ErrorScreen({ onRetry }: Readonly<{ onRetry: () => void }>) {
  const [missing, setMissing] = useState<string | null>(null);
  const saveCopy = async () => {
    const save = await lazySaving.fetch().catch(() => null);
    setMissing(save === null ? 'The part that saves could not be fetched. Press again.' : await save());
  };
  return (
    <div className={styles.problem} role="alert">
      <h1>This screen failed</h1>
      <p>
        The fault is in the app, not in what you typed. Everything you have typed is kept on this device as it
        was.
      </p>
      <div className={styles.ways}>
        <Button kind="strong" onPress={onRetry}>
          Show it again
        </Button>
        <Button onPress={() => void saveCopy()}>Save everything as a file</Button>
        {/* A whole new page, because the one that failed may fail again. */}
        <a href="/jobs">To the jobs</a>
      </div>
      {missing !== null && <p>{missing}</p>}
    </div>
  );
}
