'use client';

import { useState } from 'react';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { OWN_JOB_ID } from '@/lib/examples/ownWorkshop';
import { StartAsk } from './StartAsk';
import { StartWalk } from './StartWalk';
import { startPlace } from './startPlace';

/** The way to a workshop of one's own: asked first, then led through what matters most. */
export function StartScreen() {
  return <WithWorkspace>{(workspace) => <Start workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function Start({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const [place, setPlace] = useState(startPlace.recall);
  // The example may have been brought back by undo since the walk began.
  const isOwn = workspace.jobs.some(({ id }) => id === OWN_JOB_ID);
  const go = (to: number | null) => {
    startPlace.remember(to);
    setPlace(to);
  };
  return place !== null && isOwn ? (
    <StartWalk workspace={workspace} place={place} onGo={go} />
  ) : (
    <StartAsk workspace={workspace} onStarted={() => go(0)} />
  );
}
