'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { changedSince, type JobSince } from '@/lib/making/list/changedSince';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { workInput } from './runAsked';

/** Jobs that are otherwise than when their run began; none where it has not. */
export function useJobsSince(workspace: ReadyWorkspace, frozen: RunStandard | null): readonly JobSince[] {
  const today = useToday();
  const { workshop, blanks, artworks, jobs, onHand, approvedVersions } = workspace;
  return useMemo(() => {
    const documents = { workshop, blanks, artworks, jobs, onHand, approvedVersions };
    return changedSince(frozen, (jobId) => workInput(documents, jobId, today));
  }, [frozen, workshop, blanks, artworks, jobs, onHand, approvedVersions, today]);
}
