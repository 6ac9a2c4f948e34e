'use client';

import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { warmPriceWorker } from '@/app/_pricing/priceWorker';
import { CopiedNote } from './CopiedNote';

// It is fetched beside the documents that its first question is about.
if (typeof window !== 'undefined') warmPriceWorker();

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
