/** Said by the service worker to every page of ours: from now on the answers come from this build. */
export interface FromServiceWorker {
  readonly kind: 'tookOver';
  readonly build: string;
}

/** Understood by the library of the service worker: do not wait until every page of the build before is closed. */
export const TAKE_OVER = { type: 'SKIP_WAITING' } as const;
