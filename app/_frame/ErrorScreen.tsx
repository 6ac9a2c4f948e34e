'use client';

import { Button } from '@/app/_controls/Button';
import { CopyMakingTold } from '@/app/_copies/CopyMakingTold';
import { contentsOf } from '@/app/_copies/contentsOf';
import { type CopySource, useMakingCopy } from '@/app/_copies/useMakingCopy';
import { appDocuments } from '@/app/_store/appDocuments';
import styles from './ErrorScreen.module.css';

/** What is said where a screen failed: that nothing is lost, how to go on, and a copy to be sure. */
export function ErrorScreen({ onRetry }: Readonly<{ onRetry: () => void }>) {
  const { making, make } = useMakingCopy(source);
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
        <Button onPress={make}>Make a copy</Button>
        {/* A whole new page, because the one that failed may fail again. */}
        <a href="/jobs">To the jobs</a>
      </div>
      <CopyMakingTold making={making} />
    </div>
  );
}

// Helpers

/** Straight from the store, and only when asked: what stands between it and a screen may be what failed. */
const source: CopySource = {
  makeCopy: (what) => appDocuments().actions.makeCopy(what),
  contents: () => contentsOf(appDocuments().getState()),
};
