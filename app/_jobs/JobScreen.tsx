'use client';

import { JobNotHere } from '@/app/_docket/screen/JobNotHere';
import { WithWorkshop } from '@/app/_keeping/WithWorkspace';
import { JobOnDocket } from './JobOnDocket';

/** One job on its docket, remembered as the one last looked at. */
export function JobRoom({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkshop>
      {(maker) =>
        maker.jobs.some(({ id }) => id === jobId) ? (
          <JobOnDocket jobId={jobId} />
        ) : (
          <JobNotHere jobId={jobId} maker={maker} />
        )
      }
    </WithWorkshop>
  );
}
