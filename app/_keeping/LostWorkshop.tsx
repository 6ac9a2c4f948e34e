'use client';

import type { Maker } from '@/app/_documents/useWorkspace';
import { KeepCopy } from './KeepCopy';
import { UnreadableRecords } from './UnreadableRecords';

/** In place of every screen while the record of the workshop itself cannot be read. */
export function LostWorkshop({ maker }: Readonly<{ maker: Maker }>) {
  return (
    <>
      <h1>Your workshop cannot be read</h1>
      <p>
        Your jobs and blanks are still kept, but the rates they stand on cannot be read. Save everything as a
        file, then bring back an earlier copy.
      </p>
      <UnreadableRecords maker={maker} level={2} />
      <KeepCopy maker={maker} level={2} />
    </>
  );
}
