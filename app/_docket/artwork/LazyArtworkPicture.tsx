'use client';

import { lazy, Suspense } from 'react';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { fetchArtworkPicture } from './fetchArtworkPicture';

const ArtworkPicture = lazy(() => fetchArtworkPicture().catch(() => ({ default: NotFetched })));

/** The picture of a placement, whose code comes once the docket stands. */
export function LazyArtworkPicture(part: PlacementProps) {
  return (
    <Suspense fallback={<Fieldset name="The picture">Opening it…</Fieldset>}>
      <ArtworkPicture {...part} />
    </Suspense>
  );
}

function NotFetched() {
  return (
    <Fieldset name="The picture">
      <p>This part could not be fetched. Reload the page once there is a network.</p>
    </Fieldset>
  );
}
