'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import { JobNotHere } from '@/app/_docket/screen/JobNotHere';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { useJobInput } from '@/app/_documents/useJobInput';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { usePricedJob } from '@/app/_pricing/usePricedJob';
import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import type { JobInput } from '@/shared/schemas/request';

/** It has nothing to show before the sums are made, so it is fetched beside them. */
const lazyJobSheet = lazy(() => import('@/app/_docket/jobSheet/JobSheet').then(({ JobSheet }) => JobSheet));

/** The job that the address names on paper, looked at before it is saved. */
export function JobSheetScreen() {
  const jobId = useIdInAddress('/jobs/');
  return <WithWorkspace>{(workspace) => <SheetOf jobId={jobId} workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function SheetOf({ jobId, workspace }: Readonly<{ jobId: string; workspace: ReadyWorkspace }>) {
  const input = useJobInput(workspace, jobId);
  return input === null ? (
    <JobNotHere jobId={jobId} workspace={workspace} />
  ) : (
    <SheetOfJob key={jobId} jobId={jobId} input={input} readFile={workspace.readFile} />
  );
}

type SheetOfJobProps = Readonly<{
  jobId: string;
  input: JobInput;
  readFile: ReadyWorkspace['readFile'];
}>;

function SheetOfJob({ jobId, input, readFile }: SheetOfJobProps) {
  const { answer, failure } = usePricedJob(input);
  const sheet = useLazy(lazyJobSheet);
  const JobSheet = sheet.kind === 'here' ? sheet.value : null;
  const { name } = input.job;
  usePageName(`${name}, job sheet · Pressminute`);
  return (
    <>
      <PageHead
        title="Job sheet"
        line={
          <>
            A sheet for the bench, and one with the costs that is yours alone.{' '}
            <Link href={`/jobs/${jobId}`}>
              Back to <bdi>{name}</bdi>
            </Link>
            {', or '}
            <Link href={`/making#job-${jobId}`}>{jobSheetTable.makeIt}</Link>.
          </>
        }
      />
      <AnswerMissing what="The job sheet could not be made" failure={failure} />
      {sheet.kind === 'missing' && <PartMissing what="The job sheet" missing={sheet} />}
      {answer === null || JobSheet === null ? (
        <p role="status">The job sheet is being made…</p>
      ) : (
        <JobSheet input={input} answer={answer} readFile={readFile} context={input.workshop} />
      )}
    </>
  );
}
