'use client';

import { WithWorkshop } from '@/app/_keeping/WithWorkspace';
import { DocketOfJob } from './DocketOfJob';
import { JobNotHere } from './JobNotHere';

/** One job from top to bottom, in the order of the work. */
export function Docket({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkshop>
      {(maker) =>
        maker.jobs.some(({ id }) => id === jobId) ? (
          <DocketOfJob key={jobId} jobId={jobId} maker={maker} />
        ) : (
          <JobNotHere jobId={jobId} maker={maker} />
        )
      }
    </WithWorkshop>
  );
}
