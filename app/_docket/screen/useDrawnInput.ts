'use client';

import { useDeferredValue } from 'react';
import type { JobInput } from '@/shared/schemas/request';

/**
 * The documents a docket is drawn from: those of now, and while nothing but a picture has come, those before it until the
 * docket with the picture is drawn, bit by bit between the keys. All of it stands on the same documents: the old ones or
 * the new. Whatever is typed is shown at once, and the picture with it.
 */
export function useDrawnInput(now: JobInput | null): JobInput | null {
  const before = useDeferredValue(now);
  return before !== null && now !== null && before !== now && isOnlyPictures(before, now) ? before : now;
}

// Helpers

/** Whether nothing but pictures differs; what did not change is the same object. */
function isOnlyPictures(before: JobInput, now: JobInput): boolean {
  const ids = Object.keys(now.artworks);
  return (
    now.asOf === before.asOf &&
    now.workshop === before.workshop &&
    now.blanks === before.blanks &&
    now.job === before.job &&
    now.onHand === before.onHand &&
    now.approvedVersions === before.approvedVersions &&
    ids.length === Object.keys(before.artworks).length &&
    ids.every((id) => {
      const [old, one] = [before.artworks[id], now.artworks[id]];
      return old === one || (old !== undefined && one !== undefined && old.picture !== one.picture);
    })
  );
}
