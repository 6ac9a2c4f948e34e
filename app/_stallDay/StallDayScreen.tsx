'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { closeInForce } from '@/lib/stall/closeInForce';
import { laterParts } from './laterParts';
import { StallDocket } from './StallDocket';

/** The stall day that the address names. */
export const StallDayOfAddress = () => <StallDayScreen stallDayId={useIdInAddress('/stall/')} />;

/** One stall day: what it costs, how many to bring, what the weather does to it, whether to go. */
export function StallDayScreen({ stallDayId }: Readonly<{ stallDayId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => <StallDayHere key={stallDayId} {...{ workspace, stallDayId }} />}
    </WithWorkspace>
  );
}

// Helpers

type StallDayHereProps = Readonly<{ workspace: ReadyWorkspace; stallDayId: string }>;

function StallDayHere({ workspace, stallDayId }: StallDayHereProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const undoes = removed !== null && workspace.undoLabel === removed;
  const stallDay = workspace.stallDays[stallDayId];
  const close = closeInForce(workspace.papers.dayClose, stallDayId);
  if (stallDay !== undefined && close !== null)
    return (
      <LaterPart
        part={laterParts.closed}
        what="What came of the day"
        props={{ workspace, stallDay, close, id: stallDayId, onRemoved: setRemoved }}
      />
    );
  if (stallDay !== undefined)
    return <StallDocket {...{ workspace, stallDay }} id={stallDayId} onRemoved={setRemoved} />;
  return (
    <NotHere
      {...{ workspace, id: stallDayId }}
      what="stall day"
      isRemoved={undoes}
      aside={undoes && <Button onPress={() => void workspace.undo()}>Bring it back</Button>}
      back={{ href: '/stall', words: 'To the stall days' }}
    />
  );
}
