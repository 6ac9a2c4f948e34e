import type { AnyDocument, Bodies, Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import { sameItems } from './sameItems';

/** The live documents of one kind. */
interface OfKind<Kind extends string, Body> {
  /** In the order of their ids. */
  readonly documents: readonly Stored<Kind, Body>[];
  /** By id. A revision that says the same leaves it the same object. */
  readonly bodies: Readonly<Record<string, Body>>;
}

export type ByKind<Kinds extends Bodies> = {
  readonly [Kind in keyof Kinds & string]: OfKind<Kind, Kinds[Kind]>;
};

/** Sorts documents by kind. What did not change is taken from before, so that screens may compare by identity. */
export function kindsOf<Kinds extends Bodies>(
  registry: Registry<Kinds>,
  before: ByKind<Kinds> | null,
  documents: readonly AnyDocument<Kinds>[],
): ByKind<Kinds> {
  const all: readonly Stored[] = documents;
  const known: ByKind<Bodies> = before ?? {};
  const entries = Object.keys(registry).map((kind) => {
    const now = all.filter((document) => document.kind === kind);
    return [kind, ofKind(known[kind], now)] as const;
  });
  const isSame = before !== null && entries.every(([kind, now]) => now === known[kind]);
  // One entry for each kind, which the type of entries cannot say.
  return isSame ? before : (Object.fromEntries(entries) as unknown as ByKind<Kinds>);
}

function ofKind<Kind extends string, Body>(
  before: OfKind<Kind, Body> | undefined,
  now: readonly Stored<Kind, Body>[],
): OfKind<Kind, Body> {
  const documents = sameItems(before?.documents, now);
  if (before !== undefined && documents === before.documents) return before;
  const same =
    before !== undefined &&
    before.documents.length === now.length &&
    now.every(({ id, body }) => Object.hasOwn(before.bodies, id) && before.bodies[id] === body);
  return {
    documents,
    bodies: same ? before.bodies : Object.fromEntries(now.map(({ id, body }) => [id, body])),
  };
}
