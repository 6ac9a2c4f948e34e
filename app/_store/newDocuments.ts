import { type Bodies, entryOf, type Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';

/** A document that is not in the store yet. */
export type NewDocument<Kinds extends Bodies> = {
  [Kind in keyof Kinds & string]: { readonly id: string; readonly kind: Kind; readonly body: Kinds[Kind] };
}[keyof Kinds & string];

/** Wraps documents for their first write. A body its schema refuses is a bug of the caller and throws. */
export const newDocuments = <Kinds extends Bodies>(
  documents: readonly NewDocument<Kinds>[],
  registry: Registry,
  at: number,
): readonly Stored[] =>
  documents.map(({ id, kind, body }: NewDocument<Bodies>) => {
    const entry = entryOf(registry, kind);
    if (entry === undefined) throw new UnknownKind(kind);
    return { id, kind, version: entry.version, revision: 1, updatedAt: at, body: entry.schema.parse(body) };
  });

class UnknownKind extends Error {
  override readonly name = 'UnknownKind';
  constructor(kind: string) {
    super(`no table knows the kind “${kind}”`);
  }
}
