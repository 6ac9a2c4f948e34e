'use client';

import { useMemo } from 'react';
import type { Workspace } from '@/app/_documents/useWorkspace';
import type { ArrivalStore } from './useArriving';
import type { CopySource } from './useMakingCopy';

export type CopyStore = CopySource & Omit<ArrivalStore, 'saveFirst'>;

/** @returns what copies need of the documents. */
export function useCopyStore(workspace: Workspace): CopyStore {
  const { makeCopy, lookAtCopy, takeCopy, undo, undoLabel, jobs, lists, blanks, artworks, papers } = workspace;
  return useMemo(
    () => ({
      makeCopy,
      lookAtCopy,
      takeCopy,
      undo,
      undoLabel,
      contents: () => ({
        jobs: jobs.length,
        lists: lists.length,
        blanks: Object.keys(blanks).length,
        pictures: Object.keys(artworks).length,
        papers: Object.values(papers).flat().length,
      }),
    }),
    [makeCopy, lookAtCopy, takeCopy, undo, undoLabel, jobs, lists, blanks, artworks, papers],
  );
}
