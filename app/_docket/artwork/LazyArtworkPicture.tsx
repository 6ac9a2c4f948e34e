'use client';

import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { laterArtworkPicture } from '@/app/_docket/laterArtworkPicture';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLater } from '@/app/_network/useLater';

/** The picture of a placement, whose code comes once the docket stands. */
export function LazyArtworkPicture(part: PlacementProps) {
  const fetched = useLater(laterArtworkPicture);
  if (fetched.kind === 'coming') return <Fieldset name="The picture">Opening it…</Fieldset>;
  if (fetched.kind === 'missing')
    return (
      <Fieldset name="The picture">
        <PartMissing what="The part with the picture" missing={fetched} />
      </Fieldset>
    );
  const ArtworkPicture = fetched.value;
  return <ArtworkPicture {...part} />;
}
