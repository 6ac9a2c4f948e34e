import type { DocumentBodies } from '@/lib/kinds/kinds';
import { type BodyOf, type LearningEdit, withEdits } from '@/lib/learning/takeOver';
import type { Edit } from '@/lib/stored/prepareEdit';
import { WORKSHOP_ID } from './documentsByKind';
import type { Workspace } from './useWorkspace';

/** @returns how documents are found, whatever their kind, that hold a figure which is taken over or back. */
export const bodyOfKinds =
  ({ kinds }: Pick<Workspace, 'kinds'>): BodyOf =>
  (kind, id) =>
    kinds[kind].bodies[kind === 'workshop' ? WORKSHOP_ID : id] ?? null;

/** @returns fields written anew as edits, one for each document. */
export function takenEdits(edits: readonly LearningEdit[]): readonly Edit<DocumentBodies>[] {
  const documents = new Map(edits.map(({ kind, id }) => [`${kind} ${id}`, { kind, id }] as const));
  return [...documents.values()].map(({ kind, id }) => ({
    ...{ do: 'change', kind, id },
    to: <Body>(body: Body): Body => withEdits(body, kind, id, edits),
  }));
}
