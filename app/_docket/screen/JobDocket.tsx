'use client';

import { type ReactNode, useEffect } from 'react';
import { usePageName } from '@/app/_controls/usePageName';
import { Carry } from '@/app/_copies/Carry';
import { JobSheetLink } from '@/app/_docket/jobSheet/JobSheetLink';
import { useJobInput } from '@/app/_documents/useJobInput';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { exampleJobIds } from '@/lib/examples/exampleJobIds';
import { isExampleWorkshop } from '@/lib/examples/isExampleWorkshop';
import type { JobInput } from '@/shared/schemas/request';
import { DocketSections } from './DocketSections';
import { ExampleBand } from './ExampleBand';
import styles from './JobDocket.module.css';
import { JobNotHere } from './JobNotHere';
import { JobProvider } from './JobProvider';
import { lastJob } from './lastJob';
import { useDrawnInput } from './useDrawnInput';

type JobDocketProps = Readonly<{
  jobId: string;
  workspace: Workspace;
  /** The head of this job as the page was sent with it, to stand until the sums are made. */
  sent?: ReactNode;
}>;

/** One job from top to bottom, in the order of the work; or word that it is not here. */
export function JobDocket({ jobId, workspace, sent = null }: JobDocketProps) {
  const input = useDrawnInput(useJobInput(workspace, jobId));
  return input === null ? (
    <JobNotHere jobId={jobId} workspace={workspace} />
  ) : (
    <DocketOfJob key={jobId} {...{ jobId, workspace, input, sent }} />
  );
}

// Helpers

type DocketOfJobProps = Required<JobDocketProps> & Readonly<{ input: JobInput }>;

/** A job that is there, with its answer from the worker; remembered as the one last looked at, an example under its band. */
function DocketOfJob({ jobId, workspace, input, sent }: DocketOfJobProps) {
  const priced = usePricedJob(input);
  const head = priced.answer === null && priced.failure === null ? sent : null;
  useEffect(() => lastJob.remember(jobId), [jobId]);
  usePageName(`${input.job.name} · Pressminute`);
  return (
    <>
      {exampleJobIds.includes(jobId) && <ExampleBand isFirst={isExampleWorkshop(input.workshop)} />}
      <JobProvider {...{ jobId, workspace, input, priced }}>
        <DocketSections sent={head} />
        <p className={styles.paper}>
          On paper: <JobSheetLink jobId={jobId} />
        </p>
        <Carry store={workspace} what={{ kind: 'job', id: jobId, name: input.job.name }} />
      </JobProvider>
    </>
  );
}
