'use client';

import { useState } from 'react';
import type { KeptJob } from '@/app/_documents/documentsByKind';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyMaker, WithWorkshop } from '@/app/_keeping/WithWorkspace';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { JobList } from './JobList';
import { JobOnDocket } from './JobOnDocket';
import { lastJob } from './lastJob';

/** What opens first: the job last looked at, on a first visit the finished example. */
export function FrontDoor() {
  return <WithWorkshop>{(maker) => <Front maker={maker} />}</WithWorkshop>;
}

// Helpers

function Front({ maker }: Readonly<{ maker: ReadyMaker }>) {
  const [last] = useState(lastJob.recall);
  // A job that is kept but cannot be read is told of, not passed over for another.
  const isLastUnreadable = last !== null && maker.unreadable.some(({ id }) => id === last);
  const jobId = isLastUnreadable ? last : frontJob(maker.jobs, last);
  if (jobId === null) return <JobList maker={maker} />;
  const others = maker.unreadable.filter(({ id }) => id !== jobId);
  return (
    <>
      <UnreadableRecords maker={{ ...maker, unreadable: others }} level={2} />
      <JobOnDocket jobId={jobId} />
    </>
  );
}

function frontJob(jobs: readonly KeptJob[], last: string | null): string | null {
  const has = (id: string | null | undefined) => id != null && jobs.some((job) => job.id === id);
  const [example] = exampleJobIds;
  if (has(last)) return last;
  return has(example) ? (example ?? null) : (jobs[0]?.id ?? null);
}
