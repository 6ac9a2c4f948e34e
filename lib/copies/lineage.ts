import { type Snapshot, snapshotOf } from '@/lib/stored/documentChange';
import { readBody } from '@/lib/stored/readBody';
import { entryOf, type Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import { type Exchanged, hashOfDraft, MOST_BODIES, MOST_HASHES } from './exchanged';

/** What is known of one draft on both sides. */
interface TwoSides {
  readonly mine: Stored;
  readonly theirs: Stored;
  /** As it went out from here or came in, the last times. */
  readonly exchanged: Exchanged | null;
  /** Hashes it has had where it comes from, the latest last. */
  readonly theirHashes: readonly string[];
}

interface Lineage {
  /** What is here is what theirs was made from. */
  readonly mineIsOlder: boolean;
  readonly theirsIsOlder: boolean;
  /** Both go back to something that both have had. */
  readonly isKnown: boolean;
  /** The latest body that both have had, in the shape known here; null where none is kept. */
  readonly base: Snapshot | null;
}

/**
 * Tells by hashes which side comes from which; a clock that was set back deceives nobody. The older one is what both had
 * last: one that says again what stood before that was set back, and is a change of its own. Only where no body of what
 * both had is kept any more, any hash will do.
 */
export function lineageOf({ mine, theirs, exchanged, theirHashes }: TwoSides, registry: Registry): Lineage {
  const mineHash = hashOfDraft(snapshotOf(mine));
  const theirHash = hashOfDraft(snapshotOf(theirs));
  const there = new Set([...theirHashes, theirHash]);
  const here = new Set([...(exchanged?.hashes ?? []), mineHash]);
  // As it was written there: an older build hashed an older shape.
  const written = theirHashes.at(-1) ?? theirHash;
  const last = exchanged?.bodies.findLast(({ hash }) => there.has(hash)) ?? null;
  const current = last === null ? null : inKnownShape(last.snapshot, mine.kind, registry);
  const isLast = (hash: string) => hash === last?.hash || (current !== null && hash === hashOfDraft(current));
  return {
    mineIsOlder: last === null ? there.has(mineHash) : isLast(mineHash),
    theirsIsOlder:
      last === null ? here.has(written) || here.has(theirHash) : isLast(written) || isLast(theirHash),
    isKnown: [...here].some((hash) => there.has(hash)),
    base: current,
  };
}

/** @returns the row of a draft once it went out or came in as it is told, the latest last. */
export function withExchange(
  id: string,
  row: Exchanged | null,
  latest: { readonly hashes?: readonly string[]; readonly body: Snapshot },
): Exchanged {
  const hash = hashOfDraft(latest.body);
  const hashes = latestOf([...(row?.hashes ?? []), ...(latest.hashes ?? []), hash], (item) => item);
  const bodies = latestOf([...(row?.bodies ?? []), { hash, snapshot: latest.body }], (body) => body.hash);
  return { id, hashes: hashes.slice(-MOST_HASHES), bodies: bodies.slice(-MOST_BODIES) };
}

/** @returns the row of a draft that stayed as it is beside what came in: known from then on, and older than it. */
export function withWeighed(
  id: string,
  row: Exchanged | null,
  {
    mine,
    ...weighed
  }: { readonly mine: Snapshot; readonly hashes: readonly string[]; readonly body: Snapshot },
): Exchanged {
  const next = withExchange(id, row, weighed);
  const hash = hashOfDraft(weighed.body);
  const before = row?.bodies ?? [];
  if (before.some((body) => body.hash === hash)) return { ...next, bodies: [...before] };
  const mineLast = before.at(-1)?.hash === hashOfDraft(mine) ? before.slice(-1) : [];
  return { ...next, bodies: [...latestOf([...next.bodies, ...mineLast], (body) => body.hash)] };
}

// Helpers

function inKnownShape(base: Snapshot, kind: string, registry: Registry): Snapshot | null {
  const entry = entryOf(registry, kind);
  if (entry === undefined) return null;
  const body = readBody(base.body, base.version, entry);
  return body.ok ? { version: entry.version, deleted: base.deleted, body: body.value } : null;
}

/** Each once, where it stands last. */
function latestOf<Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly Item[] {
  const byKey = new Map<string, Item>();
  for (const item of items) {
    const key = keyOf(item);
    byKey.delete(key);
    byKey.set(key, item);
  }
  return [...byKey.values()];
}
