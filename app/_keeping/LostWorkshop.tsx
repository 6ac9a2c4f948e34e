'use client';

import { CopiesPart } from '@/app/_copies/CopiesPart';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { lazyFreshWorkshop } from './lazyFreshWorkshop';
import { UnreadableRecords } from './UnreadableRecords';

/** In place of every screen while there is no workshop to work with. */
export function LostWorkshop({ workspace }: Readonly<{ workspace: Workspace }>) {
  const lost = workspace.unreadable.find(({ id }) => id === WORKSHOP_ID);
  // A newer version can read it: a reload is the way back, and nothing may take its place.
  const isNewer = lost?.findings.some(({ code }) => code === 'newerVersion') === true;
  const fresh = useLazy(lazyFreshWorkshop, !isNewer);
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
      <CopiesPart workspace={workspace} level={2} />
      {!isNewer && fresh.kind === 'missing' && <PartMissing what="The rest of this page" missing={fresh} />}
      {!isNewer && fresh.kind === 'here' && <fresh.value workspace={workspace} lost={lost?.raw} />}
    </>
  );
}
