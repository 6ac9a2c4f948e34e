'use client';

import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { CopiedNote } from './CopiedNote';

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
