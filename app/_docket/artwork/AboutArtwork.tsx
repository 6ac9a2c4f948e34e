'use client';

import { Fold } from '@/app/_controls/Fold';
import { fieldId } from '@/app/_docket/common/fieldId';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import type { Artwork } from '@/shared/schemas/artwork';
import { ArtworkFields } from './ArtworkFields';

/** What is known of a placement's artwork, folded away. */
export function AboutArtwork({ placement, path }: PlacementProps) {
  const { input } = useJob();
  const { artworkId } = placement;
  const artwork = input.artworks[artworkId];
  if (artwork === undefined) return null;
  const place = fieldId([...path, 'artwork']);
  return (
    <Fold
      id={place}
      holds={ownFields.map((key) => `${place}-${key}`)}
      summary={`About ${artwork.name}`}
      line={formulaWords(artwork)}
    >
      <ArtworkFields key={artworkId} artwork={artwork} id={artworkId} place={path} />
    </Fold>
  );
}

// Helpers

/** What is typed inside; the picture stands outside. */
const ownFields: readonly (keyof Artwork)[] = [
  'name',
  'pixels',
  'coverage',
  'finest',
  'mirrored',
  'rights',
  'version',
  'prepMinutes',
];

const formulaWords = ({ pixels, picture, version }: Artwork): string =>
  `${picture?.fileName ?? (pixels === null ? 'line art' : `${pixels.width} × ${pixels.height} pixels`)} · version ${version}`;
