'use client';

import { Button } from '@/app/_controls/Button';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { CopyDue } from './CopyDue';
import { CopyMakingTold } from './CopyMakingTold';
import type { CopyStanding } from './copyStanding';
import styles from './HeaderCopy.module.css';
import { useCopyStore } from './useCopyStore';
import { useMakingCopy } from './useMakingCopy';

type HeaderCopyProps = Readonly<{ workspace: Workspace; standing: CopyStanding; isKept: boolean }>;

/** In the header of every screen: that a copy is due, the button that makes one, and what became of it. */
export function HeaderCopy({ workspace, standing, isKept }: HeaderCopyProps) {
  const { making, make, seen } = useMakingCopy(useCopyStore(workspace));
  return (
    <>
      {standing.state !== 'nothingOwn' && standing.isDue && (
        <CopyDue standing={standing} isKept={isKept} isBusy={making.kind === 'making'} onMake={make} />
      )}
      <div role="status" className={making.kind === 'idle' ? undefined : styles.note}>
        <CopyMakingTold making={making} />
        {(making.kind === 'made' || making.kind === 'failed') && (
          <Button kind="quiet" onPress={seen}>
            Close
          </Button>
        )}
      </div>
    </>
  );
}
