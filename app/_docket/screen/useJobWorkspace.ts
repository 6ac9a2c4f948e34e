'use client';

import { useMemo } from 'react';
import type { JobWorkspace } from '@/app/_docket/common/useJob';
import type { Workspace } from '@/app/_documents/useWorkspace';

/** @returns what a docket does with the maker's documents; the same object while only their keeping moves on. */
export function useJobWorkspace(workspace: Workspace): JobWorkspace {
  const { blanks, entries, jobs } = workspace;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is done with documents is the same for as long as the store lives
  return useMemo(() => workspace, [blanks, entries, jobs, workspace.edit]);
}
