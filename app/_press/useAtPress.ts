'use client';

import { useState } from 'react';
import { tabMemory } from '@/app/_tab/browserMemory';
import { type AtPress, atPressSchema, NOTHING_AT_PRESS } from '@/lib/pressing/atPress';

const keyOf = (runId: string) => `pressminute-press ${runId}`;

/** What is in the press just now; a reload finds it again, and counts on from when it was begun. */
export function useAtPress(runId: string): readonly [AtPress, (at: AtPress) => void] {
  const [at, setAt] = useState<AtPress>(() => {
    const known = atPressSchema.safeParse(tabMemory.recall(keyOf(runId)));
    return known.success ? known.data : NOTHING_AT_PRESS;
  });
  const set = (next: AtPress) => {
    setAt(next);
    tabMemory.remember(keyOf(runId), next);
  };
  return [at, set];
}
