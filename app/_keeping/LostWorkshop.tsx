'use client';

import type { Workspace } from '@/app/_documents/useWorkspace';
import { KeepCopy } from './KeepCopy';
import { UnreadableRecords } from './UnreadableRecords';

/** In place of every screen while the record of the workshop itself cannot be read. */
export function LostWorkshop({ workspace }: Readonly<{ workspace: Workspace }>) {
  return (
    <>
      <h1>Your workshop cannot be read</h1>
      <p>
        Your jobs and blanks are still kept, but the rates they stand on cannot be read. Save everything as a
        file, then bring back an earlier copy.
      </p>
      <UnreadableRecords workspace={workspace} level={2} />
      <KeepCopy workspace={workspace} level={2} />
    </>
  );
}
