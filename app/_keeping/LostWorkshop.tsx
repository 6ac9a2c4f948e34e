'use client';

import { lazy, Suspense } from 'react';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { Workspace } from '@/app/_documents/useWorkspace';
import { KeepCopy } from './KeepCopy';
import { UnreadableRecords } from './UnreadableRecords';

/** Hardly anybody ever needs it, so its code is fetched only then. */
const FreshWorkshop = lazy(() =>
  import('./FreshWorkshop').then(
    ({ FreshWorkshop: component }) => ({ default: component }),
    () => ({ default: NotFetched }),
  ),
);

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
          : 'Bring an earlier copy back, or go on with a fresh workshop. Save everything as a file first.'}
      </p>
      <UnreadableRecords workspace={workspace} level={2} />
      <KeepCopy workspace={workspace} level={2} />
      {!isNewer && (
        <Suspense fallback={null}>
          <FreshWorkshop workspace={workspace} lost={lost?.raw} />
        </Suspense>
      )}
    </>
  );
}

function NotFetched() {
  return <p role="alert">The rest of this page could not be fetched. Reload it once there is a network.</p>;
}
