'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { AfterRun } from './AfterRun';
import { useAfterRun } from './useAfterRun';

/** What the run that the address names came to. */
export const AfterRunOfAddress = () => <AfterRunScreen runId={useIdInAddress('/making/')} />;

/** After a run: held against its standard, and what it teaches. */
export function AfterRunScreen({ runId }: Readonly<{ runId: string }>) {
  return <WithWorkspace>{(workspace) => <AfterOfRun key={runId} {...{ workspace, runId }} />}</WithWorkspace>;
}

// Helpers

function AfterOfRun({ workspace, runId }: Readonly<{ workspace: ReadyWorkspace; runId: string }>) {
  const figures = useAfterRun(workspace, runId);
  if (figures === null)
    return <NotHere {...{ workspace, id: runId }} what="run" back={{ href: '/making', words: 'All runs' }} />;
  const { facts, result } = figures;
  if (facts.standard !== null && result !== null)
    return <AfterRun {...{ workspace, figures, result }} standard={facts.standard} />;
  return (
    <>
      <PageHead
        title={`${facts.run.name}, after the run`}
        line="It was not begun with frozen figures, so there is nothing to hold it against."
      />
      <p>
        <Link href={`/making/${encodeURIComponent(runId)}`}>To the run</Link>
      </p>
    </>
  );
}
