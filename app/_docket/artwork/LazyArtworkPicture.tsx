'use client';

import { Fieldset } from '@/app/_docket/common/Fieldset';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { lazyArtworkPicture } from './lazyArtworkPicture';

/** The picture of a placement, whose code comes once the docket stands. */
export function LazyArtworkPicture(part: PlacementProps) {
  const fetched = useLazy(lazyArtworkPicture);
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
