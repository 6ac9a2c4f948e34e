'use client';

import { useSyncExternalStore } from 'react';
import styles from './NoNetwork.module.css';

/** Says in the header that there is no network, and whether the app itself is on the device yet. */
export function NoNetwork() {
  const isOffline = useSyncExternalStore(watchNetwork, noNetwork, networkOnServer);
  return (
    <span role="status">
      {isOffline && (
        <span className={styles.state}>
          {isKeptHere() ? 'no network' : 'no network: stay on this page, the app is not kept here yet'}
        </span>
      )}
    </span>
  );
}

// Helpers

/** A page that no service worker answers for could not be opened again. */
const isKeptHere = () => navigator.serviceWorker?.controller != null;

const noNetwork = () => !navigator.onLine;
const networkOnServer = () => false;

function watchNetwork(onChange: () => void): () => void {
  window.addEventListener('online', onChange);
  window.addEventListener('offline', onChange);
  return () => {
    window.removeEventListener('online', onChange);
    window.removeEventListener('offline', onChange);
  };
}
