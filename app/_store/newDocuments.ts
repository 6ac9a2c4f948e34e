import type { Bodies, Registry } from '@/lib/stored/registry';
import type { DocumentKind, Stored } from '@/shared/schemas/stored';

/** A document that is not in the store yet. */
export type NewDocument<Kinds extends Bodies> = {
  [Kind in DocumentKind]: { readonly id: string; readonly kind: Kind; readonly body: Kinds[Kind] };
}[DocumentKind];

/** Wraps documents for their first write. A body its schema refuses is a bug of the caller and throws. */
export const newDocuments = <Kinds extends Bodies>(
  documents: readonly NewDocument<Kinds>[],
  registry: Registry,
  at: number,
): readonly Stored[] =>
  documents.map(({ id, kind, body }) => ({
    id,
    kind,
    version: registry[kind].version,
    revision: 1,
    updatedAt: at,
    body: registry[kind].schema.parse(body),
  }));
