'use client';

import { useEffect } from 'react';
import { lazyArtworkPicture } from './lazyArtworkPicture';

/** Long enough after the docket is there not to be in the way of its first figures. */
const FETCH_AFTER_MS = 2_000;

/** Fetches the code of pictures ahead, so that it is there without a network later. */
export function usePrefetchArtwork(): void {
  useEffect(() => {
    // What fails now is tried again, and told of, where it is needed.
    const timer = setTimeout(() => void lazyArtworkPicture.fetch().catch(() => undefined), FETCH_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
}
