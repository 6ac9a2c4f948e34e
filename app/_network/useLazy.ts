'use client';

import { startTransition, useEffect, useState } from 'react';
import { isGone } from './isGone';
import type { Lazy } from './lazy';
import { createRetries } from './retries';

export type Fetched<Value> =
  | { readonly kind: 'coming' }
  | { readonly kind: 'here'; readonly value: Value }
  /** A new object with every failure; it is tried again by itself, and at once by `again`. */
  | {
      readonly kind: 'missing';
      readonly again: () => void;
      /** The server has it no longer: the page opened anew has its own. */
      readonly isGone: boolean;
    };

const COMING = { kind: 'coming' } as const;

/**
 * Fetches what is needed now, and goes on trying while it cannot be had.
 *
 * @param isWanted false while nobody needs it yet
 */
export function useLazy<Value>(lazy: Lazy<Value>, isWanted = true): Fetched<Value> {
  const [told, setTold] = useState<Fetched<Value>>(COMING);
  useEffect(() => {
    if (!isWanted) return;
    let isMounted = true;
    const attempt = () => {
      lazy.fetch().then(
        // Large parts come this way: they are drawn between the keys, not before them.
        (value) => isMounted && startTransition(() => setTold({ kind: 'here', value })),
        async (error: unknown) => {
          const gone = await isGone(error instanceof Error ? error.message : '');
          if (!isMounted) return;
          retries.failed();
          setTold({ kind: 'missing', again: retries.now, isGone: gone });
        },
      );
    };
    const retries = createRetries(attempt);
    attempt();
    return () => {
      isMounted = false;
      retries.stop();
    };
  }, [lazy, isWanted]);
  const value = lazy.here();
  // What was fetched before is shown with the first look, not one later.
  return value === null ? told : { kind: 'here', value };
}
