import { utf8ToBytes } from '@noble/hashes/utils.js';
import { isPlainObject } from '@/lib/merging/sameValue';
import { type Snapshot, snapshotSchema } from '@/lib/stored/documentChange';
import { sha256OfBytes } from '@/lib/stored/sha256';
import { idSchema } from '@/shared/schemas/basics';
import { sha256Schema } from '@/shared/schemas/happened';
import { z } from '@/shared/schemas/z';

/** Of each draft: more often than that nobody carries it without the other device seeing one of them. */
export const MOST_HASHES = 50;
/** Copies are made between two meetings of the devices; what both last had must outlive them. */
export const MOST_BODIES = 4;

/** A draft as it went out or came in. */
export const exchangedSchema = z.strictObject({
  id: idSchema,
  /** The latest last. */
  hashes: z.array(sha256Schema).max(MOST_HASHES),
  /** What stands behind the latest of them, the latest last: what two devices changed is told by it. */
  bodies: z.array(z.strictObject({ hash: sha256Schema, snapshot: snapshotSchema })).max(MOST_BODIES),
});
export type Exchanged = Readonly<z.infer<typeof exchangedSchema>>;

/**
 * A draft may hold what no canonical text can: a field that is `undefined`, half of a surrogate pair. JSON leaves the
 * one away and escapes the other, so that it still has one hash before and after it was carried.
 *
 * @returns what a draft is known by when it meets itself again
 */
export function hashOfDraft({ deleted, body }: Pick<Snapshot, 'deleted' | 'body'>): string {
  if (!isPlainObject(body)) return hashOfJson({ deleted, body });
  const known = deleted ? removedHashes : liveHashes;
  const hash = known.get(body) ?? hashOfJson({ deleted, body });
  known.set(body, hash);
  return hash;
}

/* A body never changes, and meets its like several times on the way in: some milliseconds each. */
const liveHashes = new WeakMap<object, string>();
const removedHashes = new WeakMap<object, string>();

export const hashOfJson = (value: unknown): string =>
  sha256OfBytes(
    utf8ToBytes(JSON.stringify(value, (_, part: unknown) => (isPlainObject(part) ? sorted(part) : part))),
  );

const sorted = (part: Readonly<Record<string, unknown>>): unknown =>
  Object.fromEntries(Object.entries(part).toSorted(([one], [other]) => (one < other ? -1 : 1)));
