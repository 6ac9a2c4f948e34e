'use client';

import { exampleGroup } from '@/app/_docket/common/exampleGroup';
import { freshName } from '@/app/_docket/common/freshName';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { type Artwork, artworkSchema } from '@/shared/schemas/artwork';
import { setIn } from '@/shared/setIn';

const NEW = 'new artwork';

const emptyArtwork = (name: string): Artwork => artworkSchema.parse({ name, rights: { state: 'notStated' } });

/** Which picture a placement prints, all there are, and the way to choose another or a new one. */
export function useArtworkChoice({ placement, path }: PlacementProps) {
  const { jobId, input, workspace, field } = useJob();
  const { artworks } = input;
  const own = field('Artwork', [...path, 'artworkId'], `Artwork of ${placement.name}`);
  const makeNew = () => {
    const id = newId();
    const names = Object.values(artworks).map(({ name }) => name);
    workspace.edit('New artwork', [
      { do: 'add', kind: 'artwork', id, body: emptyArtwork(freshName('Artwork', names, 1)) },
      { do: 'change', kind: 'job', id: jobId, to: (job) => setIn(job, [...path, 'artworkId'], id) },
    ]);
  };
  return {
    own,
    value: artworks[placement.artworkId] === undefined ? null : placement.artworkId,
    choices: [
      ...Object.entries(artworks)
        .map(([value, { name }]) => ({ value, label: name, group: exampleGroup(jobId, value) }))
        .toSorted((one, other) => one.label.localeCompare(other.label)),
      { value: NEW, label: 'New artwork…' },
    ],
    onCommit: (id: string) => (id === NEW ? makeNew() : own.onCommit(id)),
  };
}
