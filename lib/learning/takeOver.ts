import { isPlainObject, sameValue } from '@/lib/merging/sameValue';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import { type FieldPath, setIn } from '@/shared/setIn';
import { heldAt } from './heldAt';
import type { LearnedPlace, Lesson } from './lesson';

/** A field of a document written anew. */
export interface LearningEdit {
  readonly kind: LearnedPlace['kind'];
  readonly id: string;
  /** In places of lists. */
  readonly path: FieldPath;
  readonly value: unknown;
}

/** Finds a document as it is now; null where it is gone. */
export type BodyOf = (kind: LearnedPlace['kind'], id: string) => unknown;

/**
 * A lesson written into every place that holds its figure, and the entry that says so. A place that changed since the
 * lesson was folded is left.
 */
export function takeOver(
  lesson: Lesson,
  bodyOf: BodyOf,
  day: string,
): { readonly edits: readonly LearningEdit[]; readonly body: RateTaken } {
  const places = lesson.places.flatMap((place) => {
    const found = placeNow(place, lesson.subject, bodyOf);
    return found !== null && sameValue(found.value, place.before) ? [{ place, path: found.path }] : [];
  });
  const { subject, measured, observations, spread, runIds } = lesson;
  return {
    edits: places.map(({ place, path }) => ({ kind: place.kind, id: place.id, path, value: place.after })),
    body: {
      ...{ day, subject, value: measured, observations, spread, runIds: [...runIds] },
      places: places.map(({ place }) => place),
    },
  };
}

/**
 * Every place put back as it was, to the last bit. A place that somebody changed since is left, and told.
 */
export function takeBack(
  { places, subject }: Pick<RateTaken, 'places' | 'subject'>,
  bodyOf: BodyOf,
): { readonly edits: readonly LearningEdit[]; readonly left: readonly LearnedPlace[] } {
  const edits: LearningEdit[] = [];
  const left: LearnedPlace[] = [];
  for (const place of places) {
    const found = placeNow(place, subject, bodyOf);
    if (found === null || !sameValue(found.value, place.after)) left.push(place);
    else edits.push({ kind: place.kind, id: place.id, path: found.path, value: place.before });
  }
  return { edits, left };
}

/** @returns a document with the edits that are its own. */
export const withEdits = <Body>(
  body: Body,
  kind: LearnedPlace['kind'],
  id: string,
  edits: readonly LearningEdit[],
): Body =>
  edits
    .filter((edit) => edit.kind === kind && edit.id === id)
    .reduce<Body>((written, { path, value }) => setIn(written, path, value), body);

// Helpers

/**
 * A size has no id: it goes by its name, wherever in the list it stands by now.
 *
 * @returns null where the document, or what of it was meant, is gone
 */
function placeNow({ kind, id, path }: LearnedPlace, subject: RateTaken['subject'], bodyOf: BodyOf) {
  const body = bodyOf(kind, id);
  const [list, , ...rest] = path;
  if (subject.of !== 'blankPrice' || list !== 'sizes') return heldAt(body, path);
  const sizes = isPlainObject(body) && Array.isArray(body.sizes) ? body.sizes : [];
  const at = sizes.findIndex((size) => isPlainObject(size) && size.name === subject.size);
  return at < 0 ? null : heldAt(body, [list, at, ...rest]);
}
