'use client';

import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from './laterParts';
import { UnreadableRecords } from './UnreadableRecords';

/** In place of every screen while there is no workshop to work with. */
export function LostWorkshop({ workspace }: Readonly<{ workspace: Workspace }>) {
  const lost = workspace.unreadable.find(({ id }) => id === WORKSHOP_ID);
  // A newer version can read it: a reload is the way back, and nothing may take its place.
  const isNewer = lost?.findings.some(({ code }) => code === 'newerVersion') === true;
  return (
    <>
      <h1>{lost === undefined ? 'There is no workshop here' : 'Your workshop cannot be read'}</h1>
      <p>
        {lost === undefined
          ? 'Jobs and blanks that are here stay kept, but there are no rates to price them by.'
          : 'Your jobs and blanks are still kept, but the rates they stand on cannot be read.'}{' '}
        {isNewer
          ? 'Reload the page to get the version that wrote it.'
          : 'Bring an earlier copy back, or go on with a fresh workshop. Make a copy first.'}
      </p>
      <UnreadableRecords workspace={workspace} level={2} />
      <LaterPart
        part={laterParts.copies}
        what="Making copies and bringing them back"
        props={{ workspace, level: 2 }}
      />
      {!isNewer && (
        <LaterPart
          part={laterParts.freshWorkshop}
          what="The rest of this page"
          props={{ workspace, lost: lost?.raw }}
        />
      )}
    </>
  );
}
