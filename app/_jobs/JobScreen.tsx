'use client';

import { JobNotHere } from '@/app/_docket/screen/JobNotHere';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { JobOnDocket } from './JobOnDocket';

/** One job on its docket, remembered as the one last looked at. */
export function JobScreen({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) =>
        workspace.jobs.some(({ id }) => id === jobId) ? (
          <JobOnDocket jobId={jobId} />
        ) : (
          <JobNotHere jobId={jobId} workspace={workspace} />
        )
      }
    </WithWorkspace>
  );
}
