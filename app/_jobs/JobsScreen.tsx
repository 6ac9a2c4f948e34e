'use client';

import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { JobList } from './JobList';

/** The list of all jobs. */
export function JobsScreen() {
  return <WithWorkspace>{(workspace) => <JobList workspace={workspace} />}</WithWorkspace>;
}
