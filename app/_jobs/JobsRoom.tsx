'use client';

import { WithWorkshop } from '../_documents/WithWorkshop';
import { JobList } from './JobList';

/** The list of all jobs. */
export function JobsRoom() {
  return <WithWorkshop>{(maker) => <JobList maker={maker} />}</WithWorkshop>;
}
