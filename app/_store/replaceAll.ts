import { type Snapshot, snapshotOf } from '@/lib/stored/documentChange';
import { readDocument, type UnreadableRecord } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { isPlainObject, sameValue } from '@/lib/stored/sameValue';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Stored } from '@/shared/schemas/stored';
import type { BackendTx, Row } from './backend';
import { enterHistory } from './enterHistory';

export interface Replacement {
  readonly label: string;
  readonly tab: string;
  readonly at: number;
  readonly documents: readonly {
    readonly id: string;
    readonly kind: Stored['kind'];
    readonly snapshot: Snapshot;
  }[];
  /** Records kept as they are, though nothing can read them. */
  readonly unreadable: readonly unknown[];
  readonly files: readonly StoredFile[];
  /** Documents that stay unless a live one of the same id comes. */
  readonly staying: 'all' | readonly string[];
}

/**
 * Puts documents in the place of those that are there, as one step that can be undone: what is not among them
 * and does not stay gets a tombstone. A record that cannot be read is never overwritten; where its id is needed it is moved aside.
 *
 * @returns the ids of everything written
 */
export async function replaceAll(
  tx: BackendTx,
  registry: Registry,
  { label, tab, at, documents: offered, unreadable, files, staying }: Replacement,
): Promise<readonly string[]> {
  const readings = (await tx.all('documents')).map((row) => readDocument(row, registry));
  const kept = new Map(
    readings.flatMap((reading) =>
      reading.state === 'readable' ? [[reading.document.id, reading.document] as const] : [],
    ),
  );
  const lost = readings.flatMap((reading) => (reading.state === 'unreadable' ? [reading] : []));
  const stays = (id: string) => staying === 'all' || staying.includes(id);
  const isLive = (id: string) => kept.has(id) && kept.get(id)?.deletedAt === undefined;
  const documents = offered.filter(({ id, snapshot }) => !(snapshot.deleted && stays(id) && isLive(id)));
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
        revision: (found?.revision ?? revisionOf(lost.find((record) => record.id === id))) + 1,
        updatedAt: at,
        ...(snapshot.deleted ? { deletedAt: at } : {}),
        body: snapshot.body,
      },
    };
  });
  const taken = new Set([...kept.keys(), ...lost.map(({ id }) => id), ...coming]);
  const strangers = unreadable.filter((raw) => !lost.some((record) => sameValue(record.raw, raw)));
  const free = strangers.filter((raw) => isRowWithFreeId(raw, taken));
  const aside = [
    ...lost.filter(({ id }) => coming.has(id)).map(({ raw }) => raw),
    ...strangers.filter((raw) => !isRowWithFreeId(raw, taken)),
  ];
  await tx.put('files', files);
  await setAside(tx, aside, at);
  await tx.put('documents', [...moves.map(({ document }) => document), ...free]);
  await enterHistory(tx, { label, tab, at, moves, overwrote: false });
  return [...moves.map(({ document }) => document.id), ...free.map(({ id }) => String(id))];
}

const isRowWithFreeId = (raw: unknown, taken: ReadonlySet<string>): raw is Row =>
  isPlainObject(raw) && typeof raw.id === 'string' && !taken.has(raw.id);

async function setAside(tx: BackendTx, raws: readonly unknown[], at: number): Promise<void> {
  const already = await tx.all('aside');
  const fresh = raws.filter((raw) => !already.some((row) => isPlainObject(row) && sameValue(row.raw, raw)));
  await tx.put(
    'aside',
    fresh.map((raw, index) => ({ key: `${at}-${already.length + index}`, raw })),
  );
}

/** Even a damaged record may know its revision; going on from there keeps other tabs from missing the write. */
function revisionOf(record: UnreadableRecord | undefined): number {
  const raw = record?.raw;
  const revision = typeof raw === 'object' && raw !== null && 'revision' in raw ? raw.revision : 0;
  return typeof revision === 'number' && Number.isSafeInteger(revision) && revision > 0 ? revision : 0;
}
