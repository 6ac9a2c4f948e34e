'use client';

import { useContext } from 'react';
import { Button } from '@/app/_controls/Button';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { NotHere } from '@/app/_keeping/NotHere';

/** In the place of a docket: the job was removed or never was here, or its record cannot be read. */
export function JobNotHere({ jobId, workspace }: Readonly<{ jobId: string; workspace: Workspace }>) {
  const back = useContext(FormerThingsContext).bringBack('job', jobId);
  return (
    <NotHere {...{ workspace, id: jobId }} what="job" back={{ href: '/jobs', words: 'To the jobs' }}>
      {back !== null && <Button onPress={back.onBack}>{back.label}</Button>}
    </NotHere>
  );
}
