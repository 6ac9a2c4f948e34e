'use client';

import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { CopiedNote } from './CopiedNote';

/** The job that the address names. */
export const JobOfAddress = () => <JobScreen jobId={useIdInAddress('/jobs/')} />;

/** One job on its docket. */
export function JobScreen({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => (
        <>
          <CopiedNote key={jobId} jobId={jobId} />
          <JobDocket jobId={jobId} workspace={workspace} />
        </>
      )}
    </WithWorkspace>
  );
}
