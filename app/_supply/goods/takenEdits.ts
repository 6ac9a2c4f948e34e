import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { takenPlaces } from '@/lib/buying/received/takenPlaces';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { sameValue } from '@/lib/merging/sameValue';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { RateTaken } from '@/shared/schemas/learnedEvents';
import { setIn } from '@/shared/setIn';

/** @returns the edits that put a figure into each of its places, as it was before or is after it was taken over. */
export const takenEdits = (taken: RateTaken, to: 'before' | 'after'): readonly Edit<DocumentBodies>[] =>
  takenPlaces(taken, to).map(({ kind, id, fields }) => ({
    do: 'change',
    kind,
    id,
    to: <Body>(body: Body): Body => fields.reduce((now, { path, value }) => setIn(now, path, value), body),
  }));

/** @returns whether every place still holds what was taken over. */
export const placesHeld = (taken: RateTaken, workspace: Pick<ReadyWorkspace, 'kinds'>): boolean =>
  taken.places.every(({ kind, id, path, after }) =>
    sameValue(valueAt(workspace.kinds[kind].bodies[kind === 'workshop' ? WORKSHOP_ID : id], path), after),
  );

function valueAt(body: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (part, key) =>
      typeof part === 'object' && part !== null
        ? (part as Readonly<Record<string, unknown>>)[key]
        : undefined,
    body,
  );
}
