'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { lazy } from '@/app/_network/lazy';
import { useLazy } from '@/app/_network/useLazy';
import styles from './ErrorScreen.module.css';

/** The documents are no part of the first script, and every page has this screen. */
const lazyCopy = lazy(() => import('@/app/_copies/CopyOfStore').then(({ CopyOfStore }) => CopyOfStore));

/** What is said where a screen failed: that nothing is lost, how to go on, and a copy to be sure. */
export function ErrorScreen({ onRetry }: Readonly<{ onRetry: () => void }>) {
  const [asked, setAsked] = useState(0);
  const fetched = useLazy(lazyCopy, asked > 0);
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
        <Button onPress={() => setAsked((times) => times + 1)}>Make a copy</Button>
        {/* A whole new page, because the one that failed may fail again. */}
        <a href="/jobs">To the jobs</a>
      </div>
      {asked > 0 && fetched.kind === 'here' && <fetched.value asked={asked} />}
      {fetched.kind === 'missing' && <p>The part that saves could not be fetched. Press again.</p>}
    </div>
  );
}
