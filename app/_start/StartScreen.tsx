'use client';

import { useState } from 'react';
import { type ReadyMaker, WithWorkshop } from '@/app/_keeping/WithWorkspace';
import { OWN_JOB_ID } from '@/lib/examples/ownWorkshop';
import { StartAsk } from './StartAsk';
import { StartWalk } from './StartWalk';
import { startPlace } from './startPlace';

/** The way to a workshop of one's own: asked first, then led through what matters most. */
export function StartRoom() {
  return <WithWorkshop>{(maker) => <Room maker={maker} />}</WithWorkshop>;
}

// Helpers

function Room({ maker }: Readonly<{ maker: ReadyMaker }>) {
  const [place, setPlace] = useState(startPlace.recall);
  // The example may have been brought back by undo since the walk began.
  const isOwn = maker.jobs.some(({ id }) => id === OWN_JOB_ID);
  const go = (to: number | null) => {
    startPlace.remember(to);
    setPlace(to);
  };
  return place !== null && isOwn ? (
    <StartWalk maker={maker} place={place} onGo={go} />
  ) : (
    <StartAsk maker={maker} onStarted={() => go(0)} />
  );
}
