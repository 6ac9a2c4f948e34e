'use client';

import { useMemo } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { contentsOf } from './contentsOf';
import type { ArrivalStore } from './useArriving';
import type { CopySource } from './useMakingCopy';

type CopyStore = CopySource & Omit<ArrivalStore, 'saveFirst'>;

/** @returns what copies need of the documents. */
export function useCopyStore(workspace: Workspace): CopyStore {
  const { makeCopy, lookAtCopy, takeCopy, undo, undoLabel, documents, papers } = workspace;
  return useMemo(
    () => ({
      makeCopy,
      lookAtCopy,
      takeCopy,
      undo,
      undoLabel,
      contents: () => contentsOf({ documents, papers }),
    }),
    [makeCopy, lookAtCopy, takeCopy, undo, undoLabel, documents, papers],
  );
}
