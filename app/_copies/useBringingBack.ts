'use client';

import type { Workspace } from '@/app/_documents/useWorkspace';
import { type Arriving, useArriving } from './useArriving';
import { useCopyStore } from './useCopyStore';

/** @returns a copy on its way in where nothing is here, which outlives the screen that offered it. */
export function useBringingBack(workspace: Workspace): Arriving {
  const store = useCopyStore(workspace);
  // There is nothing that could be copied first.
  return useArriving({ ...store, saveFirst: async () => 'whole' });
}
