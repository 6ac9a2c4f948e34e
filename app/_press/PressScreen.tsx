'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { runKinds } from '@/app/_runBook/runKinds';
import { notBegunWords } from '@/app/_words/press/pressWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { PressRoom } from './PressRoom';

/** The press of the run that the address names. */
export const PressOfAddress = () => <PressScreen runId={useIdInAddress('/making/')} />;

/** At the press: by the standard that the run was begun with last. */
export function PressScreen({ runId }: Readonly<{ runId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => (
        <>
          <PressOfRun key={runId} {...{ workspace, runId }} />
          <UnreadableRecords workspace={workspace} level={2} of={runKinds} />
        </>
      )}
    </WithWorkspace>
  );
}

// Helpers

function PressOfRun({ workspace, runId }: Readonly<{ workspace: ReadyWorkspace; runId: string }>) {
  const standard = workspace.papers.runStandard.findLast(
    ({ withdrawn, body }) => !withdrawn && body.runId === runId,
  );
  if (standard !== undefined) {
    const locale = usableLocale(workspace.workshop.locale);
    return <PressRoom {...{ workspace, runId, standard, locale }} />;
  }
  const run = workspace.runs[runId];
  if (run === undefined)
    return <NotHere {...{ workspace, id: runId }} what="run" back={{ href: '/making', words: 'All runs' }} />;
  return (
    <>
      <PageHead title={notBegunWords.title} line={`${run.name}. ${notBegunWords.line}`} />
      <p>
        <Link href={`/making/${encodeURIComponent(runId)}`}>{notBegunWords.link}</Link>
      </p>
    </>
  );
}
