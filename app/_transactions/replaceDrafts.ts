import type { BackendTx } from '@/app/_backend/backend';
import { type Snapshot, snapshotOf } from '@/lib/stored/documentChange';
import type { UnreadableRecord } from '@/lib/stored/openRecord';
import { readDocument } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { HistoryEntry } from './enterHistory';
import { keepLeft } from './settleRecords';

/** A draft as it is to be here. */
export interface ArrivingDraft {
  readonly id: string;
  readonly kind: Stored['kind'];
  readonly snapshot: Snapshot;
}

interface DraftsToReplace {
  readonly at: number;
  readonly documents: readonly ArrivingDraft[];
  /** Documents that stay unless a live one of the same id comes. */
  readonly staying: 'all' | readonly string[];
}

/**
 * Puts drafts in the place of those that are there: what is not among them and does not stay gets a tombstone.
 *
 * @returns what moved, for the history, and records nothing can read that must make way
 */
export async function replaceDrafts(
  tx: BackendTx,
  registry: Registry,
  { at, documents: offered, staying }: DraftsToReplace,
): Promise<Pick<HistoryEntry, 'moves'> & { readonly aside: readonly unknown[] }> {
  const readings = (await tx.all('documents')).map((row) => readDocument(row, registry));
  const kept = new Map(
    readings.flatMap((reading) =>
      reading.state === 'readable' ? [[reading.document.id, reading.document] as const] : [],
    ),
  );
  const lost = readings.flatMap((reading) => (reading.state === 'unreadable' ? [reading] : []));
  const stays = (id: string) => staying === 'all' || staying.includes(id);
  const isLive = (id: string) => kept.has(id) && kept.get(id)?.deletedAt === undefined;
  // Beside others a draft comes removed only where the maker asked for that.
  const isHeld = (id: string) => staying !== 'all' && stays(id) && isLive(id);
  const documents = offered.filter(({ id, snapshot }) => !(snapshot.deleted && isHeld(id)));
  const coming = new Set(documents.map(({ id }) => id));
  const leaving = [...kept.values()]
    .filter(({ id, deletedAt }) => !coming.has(id) && !stays(id) && deletedAt === undefined)
    .map((document) => ({ ...document, snapshot: { ...snapshotOf(document), deleted: true } }));
  const moves = [...leaving, ...documents].map(({ id, kind, snapshot }) => {
    const found = kept.get(id);
    return {
      before: found === undefined ? null : snapshotOf(found),
      foundRevision: found?.revision ?? null,
      document: {
        id,
        kind,
        version: snapshot.version,
        // The first revision is of what was made here.
        revision: Math.max(1, found?.revision ?? revisionOf(lost.find((record) => record.id === id))) + 1,
        updatedAt: at,
        ...(snapshot.deleted ? { deletedAt: at } : {}),
        body: snapshot.body,
      },
    };
  });
  const moved = new Set(moves.map(({ document }) => document.id));
  await keepLeft(
    tx,
    registry,
    readings.flatMap((reading) =>
      reading.state === 'readable' && moved.has(reading.document.id) ? [reading.left] : [],
    ),
  );
  await tx.put(
    'documents',
    moves.map(({ document }) => document),
  );
  return { moves, aside: lost.filter(({ id }) => coming.has(id)).map(({ raw }) => raw) };
}

/** Even a damaged record may know its revision; going on from there keeps other tabs from missing the write. */
function revisionOf(record: UnreadableRecord | undefined): number {
  const raw = record?.raw;
  const revision = typeof raw === 'object' && raw !== null && 'revision' in raw ? raw.revision : 0;
  return typeof revision === 'number' && Number.isSafeInteger(revision) && revision > 0 ? revision : 0;
}
