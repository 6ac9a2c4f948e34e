'use client';

import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { DocketOfJob } from './DocketOfJob';
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
