'use client';

import { useMemo } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useToday } from '@/app/_clock/useToday';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { type CopyStanding, copyStanding } from './copyStanding';
import { ownChangedAt } from './ownChanges';
import { ownSince } from './ownSince';

type Kept = Pick<
  Workspace,
  'status' | 'documents' | 'removed' | 'entries' | 'papers' | 'device' | 'lastCopyAt' | 'copiedUpTo'
>;

/** @returns how what is here stands to the last copy of it. */
export function useCopyStanding(workspace: Kept): CopyStanding {
  const day = useToday();
  const { status, documents, removed, entries, papers, device, lastCopyAt, copiedUpTo } = workspace;
  const changedAt = useMemo(
    () =>
      // Of what was removed altogether nobody makes a copy.
      documents.length + Object.values(entries).flat().length === 0
        ? null
        : ownChangedAt({ documents, removed, entries, papers, device }),
    [documents, removed, entries, papers, device],
  );
  return copyStanding({
    ownSince: status === 'ready' && changedAt !== null ? ownSince() : null,
    lastCopyOn: lastCopyAt === null ? null : dayOf(new Date(lastCopyAt)),
    hasNew: changedAt !== null && (copiedUpTo === null || changedAt > copiedUpTo),
    today: day,
  });
}
