'use client';

import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';

/** One job on its docket. */
export function JobScreen({ jobId }: Readonly<{ jobId: string }>) {
  return <WithWorkspace>{(workspace) => <JobDocket jobId={jobId} workspace={workspace} />}</WithWorkspace>;
}
