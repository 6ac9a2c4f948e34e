'use client';

import { useSyncExternalStore } from 'react';

/** What stands after # in the address, without it; empty on the server. */
export const useHash = (): string => useSyncExternalStore(watchHash, hashNow, () => '');

const hashNow = () => decodeURIComponent(window.location.hash.slice(1));

function watchHash(onChange: () => void): () => void {
  window.addEventListener('hashchange', onChange);
  return () => window.removeEventListener('hashchange', onChange);
}
