'use client';

import { keepsFocus } from '@/app/_controls/keepsFocus';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { runKinds } from '@/app/_runBook/runKinds';
import { notFrozen } from '@/app/_words/afterRun/afterRunWords';
import { formatterFor } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import { AfterRun } from './AfterRun';
import { useAfterRun } from './useAfterRun';
import { WayBack } from './WayBack';

/** What the run that the address names came to. */
export const AfterRunOfAddress = () => <AfterRunScreen runId={useIdInAddress('/making/')} />;

/** After a run: held against its standard, and what it teaches. */
export function AfterRunScreen({ runId }: Readonly<{ runId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => (
        <>
          <MakingLinks here="/making" isInside />
          <UnreadableRecords workspace={workspace} level={2} of={runKinds} />
          <AfterOfRun key={runId} {...{ workspace, runId }} />
        </>
      )}
    </WithWorkspace>
  );
}

// Helpers

function AfterOfRun({ workspace, runId }: Readonly<{ workspace: ReadyWorkspace; runId: string }>) {
  const figures = useAfterRun(workspace, runId);
  if (figures === null)
    return <NotHere {...{ workspace, id: runId }} what="run" back={{ href: '/making', words: 'All runs' }} />;
  const { facts, result } = figures;
  const { standard, run } = facts;
  if (standard === null || result === null)
    return (
      <>
        <WayBack {...{ runId }} name={run.name} />
        <PageHead title={`${run.name}, after the run`} line={notFrozen} />
      </>
    );
  const formatter = formatterFor({ ...workspace.workshop, currency: result.currency });
  const locale = usableLocale(workspace.workshop.locale);
  return (
    <>
      <WayBack {...{ runId }} name={run.name} />
      <div ref={keepsFocus}>
        <AfterRun on={{ workspace, figures, result, standard, formatter, locale }} />
      </div>
    </>
  );
}
