'use client';

import type { Artwork } from '@/shared/schemas/artwork';
import { setIn } from '@/shared/setIn';
import { newId } from '../_documents/newId';
import { ChoiceField } from '../_fields/ChoiceField';
import { ArtworkFields } from './ArtworkFields';
import { Fold } from './Fold';
import { fieldId } from './fieldId';
import { freshName } from './freshName';
import { useJobDesk } from './jobDesk';
import { Part } from './Part';
import type { PlacementPart } from './placementPart';

const NEW = 'new artwork';

const emptyArtwork = (name: string): Artwork => ({
  name,
  pixels: null,
  coverage: null,
  mirrored: false,
  rights: { state: 'notStated', note: '' },
  version: 1,
  approvedVersion: null,
  prepMinutes: null,
});

/** Which picture is printed, and what is known of it. */
export function PlacementArtwork({ placement, path }: PlacementPart) {
  const { jobId, input, maker, field } = useJobDesk();
  const { artworks } = input;
  const artwork = artworks[placement.artworkId];
  const own = field('Artwork', [...path, 'artworkId'], `Artwork of ${placement.name}`);
  const makeNew = () => {
    const id = newId();
    const names = Object.values(artworks).map(({ name }) => name);
    maker.edit('New artwork', [
      { do: 'add', kind: 'artwork', id, body: emptyArtwork(freshName('Artwork', names)) },
      { do: 'change', kind: 'job', id: jobId, to: (job) => setIn(job, [...path, 'artworkId'], id) },
    ]);
  };
  const place = fieldId([...path, 'artwork']);
  return (
    <>
      <Part name="The artwork">
        <ChoiceField
          {...own}
          value={artwork === undefined ? null : placement.artworkId}
          choices={[
            ...Object.entries(artworks)
              .map(([value, { name }]) => ({ value, label: name }))
              .toSorted((one, other) => one.label.localeCompare(other.label)),
            { value: NEW, label: 'New artwork…' },
          ]}
          onCommit={(id) => (id === NEW ? makeNew() : own.onCommit(id))}
        />
      </Part>
      {artwork !== undefined && (
        <Fold id={place} holds={[place]} summary={`About ${artwork.name}`} line={inWords(artwork)}>
          <ArtworkFields artwork={artwork} id={placement.artworkId} place={path} />
        </Fold>
      )}
    </>
  );
}

// Helpers

const inWords = ({ pixels, version }: Artwork): string =>
  `${pixels === null ? 'line art' : `${pixels.width} × ${pixels.height} pixels`} · version ${version}`;
