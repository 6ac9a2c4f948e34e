'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { runKinds } from '@/app/_runBook/runKinds';
import { useRunBook } from '@/app/_runBook/useRunBook';
import { mirrorDoubts } from '@/lib/pressing/mirrorDoubts';
import { RunDocket } from './RunDocket';

/** The run that the address names. */
export const RunOfAddress = () => <RunScreen runId={useIdInAddress('/making/')} />;

/** One run: what is made, when, how fast, with what, and its sheet for the press. */
export function RunScreen({ runId }: Readonly<{ runId: string }>) {
  return <WithWorkspace>{(workspace) => <RunHere key={runId} {...{ workspace, runId }} />}</WithWorkspace>;
}

// Helpers

type RunHereProps = Readonly<{ workspace: ReadyWorkspace; runId: string }>;

function RunHere({ workspace, runId }: RunHereProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const { runs, of } = useRunBook(workspace);
  const facts = of(runId);
  const doubts = useMemo(() => mirrorDoubts(runs), [runs]);
  const undoes = removed !== null && workspace.undoLabel === removed;
  return (
    <>
      <MakingLinks here="/making" isInside />
      <UnreadableRecords workspace={workspace} level={2} of={runKinds} />
      {facts === null ? (
        <NotHere
          {...{ workspace, id: runId }}
          what="run"
          isRemoved={undoes}
          aside={undoes && <Button onPress={() => void workspace.undo()}>Bring it back</Button>}
          back={{ href: '/making', words: 'To the runs' }}
        />
      ) : (
        <RunDocket {...{ workspace, facts, doubts }} onRemoved={setRemoved} />
      )}
    </>
  );
}
