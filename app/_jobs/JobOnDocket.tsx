'use client';

import { useEffect } from 'react';
import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { ExampleBand } from './ExampleBand';
import { lastJob } from './lastJob';

/** The docket of a job, remembered as the one last looked at; on an example under its band. */
export function JobOnDocket({ jobId }: Readonly<{ jobId: string }>) {
  useEffect(() => lastJob.remember(jobId), [jobId]);
  return (
    <>
      {exampleJobIds.includes(jobId) && <ExampleBand />}
      <JobDocket key={jobId} jobId={jobId} />
    </>
  );
}
