'use client';

import { lazy, Suspense } from 'react';
import { Part } from '@/app/_docket/common/Fieldset';
import type { PlacementPart } from '@/app/_docket/common/placementProps';
import { fetchArtworkPicture } from './fetchArtworkPicture';

const ArtworkPicture = lazy(() => fetchArtworkPicture().catch(() => ({ default: NotFetched })));

/** The picture of a placement, whose code comes once the docket stands. */
export function ArtworkPictureLater(part: PlacementPart) {
  return (
    <Suspense fallback={<Part name="The picture">Opening it…</Part>}>
      <ArtworkPicture {...part} />
    </Suspense>
  );
}

function NotFetched() {
  return (
    <Part name="The picture">
      <p>This part could not be fetched. Reload the page once there is a network.</p>
    </Part>
  );
}
