'use client';

import type { Artwork } from '@/shared/schemas/artwork';
import { ArtworkFields } from './ArtworkFields';
import { Fold } from './Fold';
import { fieldId } from './fieldId';
import { useJobDesk } from './jobDesk';
import type { PlacementPart } from './placementPart';

/** What is known of a placement's artwork, folded away. */
export function AboutArtwork({ placement, path }: PlacementPart) {
  const { input } = useJobDesk();
  const { artworkId } = placement;
  const artwork = input.artworks[artworkId];
  if (artwork === undefined) return null;
  const place = fieldId([...path, 'artwork']);
  return (
    <Fold id={place} holds={[place]} summary={`About ${artwork.name}`} line={inWords(artwork)}>
      <ArtworkFields key={artworkId} artwork={artwork} id={artworkId} place={path} />
    </Fold>
  );
}

// Helpers

const inWords = ({ pixels, version }: Artwork): string =>
  `${pixels === null ? 'line art' : `${pixels.width} × ${pixels.height} pixels`} · version ${version}`;
