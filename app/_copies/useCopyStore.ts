'use client';

import { useMemo } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { ArrivalStore } from './useArriving';
import type { CopySource } from './useMakingCopy';

type CopyStore = CopySource & Omit<ArrivalStore, 'saveFirst'>;

/** @returns what copies need of the documents. */
export function useCopyStore(workspace: Workspace): CopyStore {
  const { makeCopy, lookAtCopy, takeCopy, undo, undoLabel } = workspace;
  return useMemo(
    () => ({
      makeCopy,
      lookAtCopy,
      takeCopy,
      undo,
      undoLabel,
    }),
    [makeCopy, lookAtCopy, takeCopy, undo, undoLabel],
  );
}
