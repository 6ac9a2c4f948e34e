'use client';

import { WithWorkshop } from '@/app/_keeping/WithWorkspace';
import { JobList } from './JobList';

/** The list of all jobs. */
export function JobsRoom() {
  return <WithWorkshop>{(maker) => <JobList maker={maker} />}</WithWorkshop>;
}
