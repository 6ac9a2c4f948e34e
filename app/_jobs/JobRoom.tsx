'use client';

import Link from 'next/link';
import { WithWorkshop } from '../_documents/WithWorkshop';
import { PageHead } from '../_shell/PageHead';
import { JobOnDocket } from './JobOnDocket';

/** One job on its docket, remembered as the one last looked at. */
export function JobRoom({ jobId }: Readonly<{ jobId: string }>) {
  return (
    <WithWorkshop>
      {({ jobs }) => (jobs.some(({ id }) => id === jobId) ? <JobOnDocket jobId={jobId} /> : <NoSuchJob />)}
    </WithWorkshop>
  );
}

// Helpers

function NoSuchJob() {
  return (
    <>
      <PageHead title="This job is not here" line="It was removed, or is kept on another device." />
      <p>
        If you have just removed it, undo brings it back. <Link href="/jobs">To the jobs</Link>
      </p>
    </>
  );
}
