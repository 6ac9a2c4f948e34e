'use client';

import { useSyncExternalStore } from 'react';
import styles from './NoNetwork.module.css';

/** Says in the header that there is no network. Nothing waits for one. */
export function NoNetwork() {
  const isOffline = useSyncExternalStore(watchNetwork, noNetwork, networkOnServer);
  return (
    <span role="status">
      {isOffline && (
        <span className={styles.state} title="Everything works without one, and is kept on this device.">
          no network
        </span>
      )}
    </span>
  );
}

// Helpers

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
