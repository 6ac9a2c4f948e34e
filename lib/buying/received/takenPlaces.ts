import { canonicalText } from '@/lib/stored/canonicalText';
import type { RateTaken } from '@/shared/schemas/learnedEvents';

type Place = RateTaken['places'][number];

/** Fields of one document that are set, by path. */
interface PlacesOfDocument {
  readonly kind: Place['kind'];
  readonly id: string;
  readonly fields: readonly { readonly path: Place['path']; readonly value: Place['after'] }[];
}

/** @returns what is set where a figure is taken over (`after`) or taken back (`before`), document by document. */
export function takenPlaces(
  { places }: Pick<RateTaken, 'places'>,
  to: 'before' | 'after',
): readonly PlacesOfDocument[] {
  const documents = new Map<string, PlacesOfDocument>();
  for (const place of places) {
    const key = canonicalText([place.kind, place.id]);
    const known = documents.get(key) ?? { kind: place.kind, id: place.id, fields: [] };
    const fields = [...known.fields, { path: place.path, value: place[to] }];
    documents.set(key, { ...known, fields });
  }
  return [...documents.values()];
}
