'use client';

import { useJobInput } from '@/app/_documents/useJobInput';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { DocketSections } from './DocketSections';

/** A job that is there, with its answer from the worker. */
export function DocketOfJob({ jobId, workspace }: Readonly<{ jobId: string; workspace: Workspace }>) {
  const input = useJobInput(workspace, jobId);
  const priced = usePricedJob(input);
  return input && <DocketSections jobId={jobId} workspace={workspace} input={input} priced={priced} />;
}
