'use client';

import { useJobInput } from '@/app/_documents/useJobInput';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { DocketSections } from './DocketSections';
import { JobNotHere } from './JobNotHere';

/** One job from top to bottom, in the order of the work. */
export function JobDocket({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) =>
        workspace.jobs.some(({ id }) => id === jobId) ? (
          <DocketOfJob key={jobId} jobId={jobId} workspace={workspace} />
        ) : (
          <JobNotHere jobId={jobId} workspace={workspace} />
        )
      }
    </WithWorkspace>
  );
}

/** A job that is there, with its answer from the worker. */
function DocketOfJob({ jobId, workspace }: Readonly<{ jobId: string; workspace: Workspace }>) {
  const input = useJobInput(workspace, jobId);
  const priced = usePricedJob(input);
  return input && <DocketSections jobId={jobId} workspace={workspace} input={input} priced={priced} />;
}
