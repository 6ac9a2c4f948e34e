'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
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
