'use client';

import { lazy, Suspense } from 'react';
import { KeepCopy } from './KeepCopy';
import { WORKSHOP_ID } from './makerDocuments';
import { UnreadableRecords } from './UnreadableRecords';
import type { Maker } from './useMaker';

/** Hardly anybody ever needs it, so its code is fetched only then. */
const FreshWorkshop = lazy(() =>
  import('./FreshWorkshop').then(
    ({ FreshWorkshop: component }) => ({ default: component }),
    () => ({ default: NotFetched }),
  ),
);

/** In place of every screen while there is no workshop to work with. */
export function LostWorkshop({ maker }: Readonly<{ maker: Maker }>) {
  const lost = maker.unreadable.find(({ id }) => id === WORKSHOP_ID);
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
      <UnreadableRecords maker={maker} level={2} />
      <KeepCopy maker={maker} level={2} />
      {!isNewer && (
        <Suspense fallback={null}>
          <FreshWorkshop maker={maker} lost={lost?.raw} />
        </Suspense>
      )}
    </>
  );
}

function NotFetched() {
  return <p role="alert">The rest of this page could not be fetched. Reload it once there is a network.</p>;
}
