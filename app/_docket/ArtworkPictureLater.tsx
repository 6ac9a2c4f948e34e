'use client';

import { PartMissing } from '../_network/PartMissing';
import { useLater } from '../_network/useLater';
import { laterArtworkPicture } from './laterArtworkPicture';
import { Part } from './Part';
import type { PlacementPart } from './placementPart';

/** The picture of a placement, whose code comes once the docket stands. */
export function ArtworkPictureLater(part: PlacementPart) {
  const fetched = useLater(laterArtworkPicture);
  if (fetched.kind === 'coming') return <Part name="The picture">Opening it…</Part>;
  if (fetched.kind === 'missing')
    return (
      <Part name="The picture">
        <PartMissing what="The part with the picture" missing={fetched} />
      </Part>
    );
  const ArtworkPicture = fetched.value;
  return <ArtworkPicture {...part} />;
}
