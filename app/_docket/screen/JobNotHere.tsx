'use client';

import Link from 'next/link';
import { useContext } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';

/** In the place of a docket: the job was removed or never was here, or its record cannot be read. */
export function JobNotHere({ jobId, workspace }: Readonly<{ jobId: string; workspace: Workspace }>) {
  const back = useContext(FormerThingsContext).bringBack('job', jobId);
  const records = workspace.unreadable.filter(({ id }) => id === jobId);
  if (records.length > 0)
    return (
      <>
        <PageHead
          title="This job cannot be read"
          line="Its record stays kept as it is. Save it as a file, so that nothing of it is lost."
        />
        <UnreadableRecords workspace={{ ...workspace, unreadable: records }} level={2} />
        <p>
          <Link href="/jobs">To the other jobs</Link>
        </p>
      </>
    );
  return (
    <>
      <PageHead title="This job is not here" line="It was removed, or is kept on another device." />
      {back !== null && <Button onPress={back.onBack}>{back.label}</Button>}
      <p>
        If you have just removed it, undo brings it back. <Link href="/jobs">To the jobs</Link>
      </p>
    </>
  );
}
