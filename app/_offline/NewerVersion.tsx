'use client';

import { useEffect, useSyncExternalStore } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from './NewerVersion.module.css';
import { keepApp, type Newer, newerVersion, takeNewerVersion, watchVersions } from './versions';
import { whenCalm } from './whenCalm';

type NewerVersionProps = Readonly<{
  /** Whether the documents are open: before, the line and the device are needed for them. */
  isReady: boolean;
}>;

const WORDS: Readonly<Record<Exclude<Newer, 'none'>, string>> = {
  waiting: 'A newer version is here. What you typed stays.',
  taking: 'The newer version is being opened…',
  notKept: 'The newer version waits: something you typed is not kept yet, as the header says.',
  elsewhere: 'A newer version was taken in another tab. This page is still the one before.',
};

const keeps = { isStarted: false };

/** Keeps the app on the device once the page is usable, and tells quietly of newer versions. */
export function NewerVersion({ isReady }: NewerVersionProps) {
  const newer = useSyncExternalStore(watchVersions, newerVersion, nothingNewer);
  useEffect(() => {
    // The development server's pages change with every key.
    const canKeep = process.env.NODE_ENV === 'production' && 'serviceWorker' in navigator;
    if (!isReady || !canKeep || keeps.isStarted) return;
    return whenCalm(() => {
      keeps.isStarted = true;
      void keepApp();
    });
  }, [isReady]);
  return (
    <div role="status">
      {newer !== 'none' && (
        <div className={styles.note}>
          <p>{WORDS[newer]}</p>
          {newer !== 'taking' && <Button onPress={() => void takeNewerVersion()}>Take it</Button>}
        </div>
      )}
    </div>
  );
}

const nothingNewer = (): Newer => 'none';
