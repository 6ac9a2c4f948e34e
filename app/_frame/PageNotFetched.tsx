'use client';

import { usePathname } from 'next/navigation';
import { useOffline } from 'next/offline';
import { useEffect, useSyncExternalStore } from 'react';
import styles from './PageNotFetched.module.css';
import { wantedPage, wantPage, watchWantedPage } from './wantedPage';

/**
 * Says that the page asked for cannot be had: the one that is there stays, and works. The router goes on asking for it
 * (`useOffline` in next.config.ts) and opens it once the server answers, or another that is asked for instead.
 */
export function PageNotFetched() {
  const isOffline = useOffline();
  const wanted = useSyncExternalStore(watchWantedPage, wantedPage, nothingWanted);
  const path = usePathname();
  useEffect(() => {
    // Reached, or another page was.
    if (path !== '') wantPage(null);
  }, [path]);
  const isMissing = isOffline && wanted !== null && pathOf(wanted) !== path;
  return (
    <div role="status">
      {isMissing && (
        <p className={styles.note}>
          The page you asked for could not be fetched; you can go on here. It opens once the server answers,
          or when you press the link again.
        </p>
      )}
    </div>
  );
}

// Helpers

const nothingWanted = () => null;

const pathOf = (address: string): string => new URL(address, window.location.href).pathname;
