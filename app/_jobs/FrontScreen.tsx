'use client';

import { useState } from 'react';
import { JobDocket } from '@/app/_docket/screen/JobDocket';
import { lastJob } from '@/app/_docket/screen/lastJob';
import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { Sent } from '@/app/_firstScreen/ScreenDoor';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';

/** Seldom what opens first: only where no job is left. */
const lazyJobList = lazy(() => import('./JobList').then(({ JobList }) => JobList));

/** What opens first: the job last looked at, on a first visit the finished example. */
export function FrontScreen({ sent, band }: Sent) {
  const opening = sent && (
    <>
      {band}
      {sent}
    </>
  );
  return (
    <WithWorkspace opening={opening}>
      {(workspace) => <Front workspace={workspace} sent={sent} />}
    </WithWorkspace>
  );
}

// Helpers

function Front({ workspace, sent }: Pick<Sent, 'sent'> & Readonly<{ workspace: ReadyWorkspace }>) {
  const [last] = useState(lastJob.recall);
  // A job that is kept but cannot be read is told of, not passed over for another.
  const isLastUnreadable = last !== null && workspace.unreadable.some(({ id }) => id === last);
  const jobId = isLastUnreadable ? last : frontJob(workspace.jobs, last);
  if (jobId === null) return <NoJobs workspace={workspace} />;
  const others = workspace.unreadable.filter(({ id }) => id !== jobId);
  return (
    <>
      <UnreadableRecords workspace={{ ...workspace, unreadable: others }} level={2} />
      {/* Until its sums are made the example shows those it was sent with, unless somebody has changed it. */}
      <JobDocket
        jobId={jobId}
        workspace={workspace}
        sent={jobId === exampleJobIds[0] && isUntouched(workspace) ? sent : null}
      />
    </>
  );
}

function NoJobs({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const fetched = useLazy(lazyJobList);
  if (fetched.kind === 'coming') return null;
  if (fetched.kind === 'missing') return <PartMissing what="The list of jobs" missing={fetched} />;
  const JobList = fetched.value;
  return <JobList workspace={workspace} />;
}

function frontJob(jobs: readonly JobRecord[], last: string | null): string | null {
  const has = (id: string | null | undefined) => id != null && jobs.some((job) => job.id === id);
  const [example] = exampleJobIds;
  if (has(last)) return last;
  return has(example) ? (example ?? null) : (jobs[0]?.id ?? null);
}

const isUntouched = ({ documents, removed }: ReadyWorkspace): boolean =>
  removed.length === 0 && documents.every(({ revision }) => revision === 1);
