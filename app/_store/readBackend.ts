import type { BackendTx } from '@/app/_backend/backend';
import { type Device, readDevice } from '@/app/_transactions/deviceIdentity';
import { isWrittenOnce } from '@/app/_transactions/keepUnreadable';
import { type LastCopy, readLastCopy } from '@/app/_transactions/lastCopy';
import { readLastErasure } from '@/app/_transactions/lastErasure';
import { isPlainObject } from '@/lib/merging/sameValue';
import { claimsOf, type UnreadableRecord } from '@/lib/stored/openRecord';
import { readDocument } from '@/lib/stored/readDocument';
import { readEntry } from '@/lib/stored/readEntry';
import { readPaper } from '@/lib/stored/readPaper';
import type { Registry, StoreKinds } from '@/lib/stored/registry';
import { readSteps, type Step } from '@/lib/stored/step';
import type { Entry, Paper } from '@/shared/schemas/happened';
import type { Stored } from '@/shared/schemas/stored';
import { inSlices } from './inSlices';
import { readStoreId } from './storeIdentity';
import type { TabState } from './tabState';

/** What was found in the store. */
interface BackendReading {
  readonly documents: readonly Stored[];
  readonly unreadable: readonly UnreadableRecord[];
  readonly aside: readonly UnreadableRecord[];
  readonly steps: readonly Step[];
  readonly entries: readonly Entry[];
  readonly papers: readonly Paper[];
  readonly unreadableHappened: readonly UnreadableRecord[];
  readonly lastErasure: number;
  readonly device: Device | null;
  readonly lastCopy: LastCopy | null;
  readonly storeId: string | null;
}

/** What a tab holds already of entries and papers, which never change once they are written, but where names are erased. */
type KnownHappened = Pick<TabState, 'entries' | 'papers' | 'unreadableHappened' | 'lastErasure'>;

/**
 * Reads documents, entries, papers and history, every record through its schema; all of them where no ids are given.
 * Entries and papers that are known already are not read again.
 */
export async function readBackend(
  tx: BackendTx,
  kinds: StoreKinds,
  ids: readonly string[] | null,
  known: KnownHappened,
): Promise<BackendReading> {
  const { registry } = kinds;
  const rows = ids === null ? await tx.all('documents') : await tx.get('documents', ids);
  const steps = readSteps(await tx.all('steps'));
  const aside = await tx.all('aside');
  const device = await readDevice(tx);
  const lastCopy = await readLastCopy(tx);
  const storeId = await readStoreId(tx);
  const lastErasure = await readLastErasure(tx);
  const isErased = lastErasure > known.lastErasure;
  const entryRows = isErased ? await tx.all('entries') : await unknownRows(tx, 'entries', ids, known);
  const paperRows = await unknownRows(tx, 'papers', ids, known);
  // Everything that is asked of the store has been asked.
  const readings = rows.filter((row) => row !== undefined).map((row) => readDocument(row, registry));
  // What records of an earlier version still hold counts as well, before it is kept by itself.
  const left = readings.flatMap((reading) => (reading.state === 'readable' ? [reading.left] : []));
  const entries = await inSlices([...entryRows, ...left.flatMap((part) => part.entries)], (row) =>
    readEntry(row, kinds.entryKinds),
  );
  const papers = await inSlices([...paperRows, ...left.flatMap((part) => part.papers)], (row) =>
    readPaper(row, kinds.paperKinds),
  );
  return {
    documents: readings.flatMap((reading) => (reading.state === 'readable' ? [reading.document] : [])),
    unreadable: readings.flatMap((reading) => (reading.state === 'unreadable' ? [reading] : [])),
    aside: aside.flatMap((row) => asideRecord(row, registry)),
    steps,
    entries: entries.flatMap((reading) => (reading.state === 'readable' ? [reading.entry] : [])),
    papers: papers.flatMap((reading) => (reading.state === 'readable' ? [reading.paper] : [])),
    unreadableHappened: [...entries, ...papers].flatMap((reading) =>
      reading.state === 'unreadable' ? [reading] : [],
    ),
    lastErasure,
    device,
    lastCopy,
    storeId,
  };
}

/** Takes a reading into what the tab holds. A slow read may be older than what is held by now: newer stays. */
export function absorb(
  tabState: TabState,
  {
    documents,
    unreadable,
    ...rest
  }: Partial<Omit<BackendReading, 'documents'>> & Pick<BackendReading, 'documents'>,
): Pick<TabState, keyof BackendReading> {
  const all = new Map(tabState.documents);
  const lost = new Map(tabState.unreadable);
  for (const document of documents) {
    if ((all.get(document.id)?.revision ?? 0) < document.revision) all.set(document.id, document);
    lost.delete(document.id);
  }
  for (const record of unreadable ?? []) {
    all.delete(record.id);
    lost.set(record.id, record);
  }
  const isErased = (rest.lastErasure ?? 0) > tabState.lastErasure;
  return {
    documents: all,
    unreadable: lost,
    aside: rest.aside ?? tabState.aside,
    steps: rest.steps ?? tabState.steps,
    entries: withMore(isErased ? new Map() : tabState.entries, rest.entries),
    papers: withMore(tabState.papers, rest.papers),
    unreadableHappened: withMore(tabState.unreadableHappened, rest.unreadableHappened),
    lastErasure: Math.max(rest.lastErasure ?? 0, tabState.lastErasure),
    device: sameDevice(tabState.device, rest.device ?? null),
    lastCopy: rest.lastCopy ?? tabState.lastCopy,
    // A look does not make another store the one that all here came from: the next write sees to that.
    storeId: tabState.storeId ?? rest.storeId ?? null,
  };
}

async function unknownRows(
  tx: BackendTx,
  table: 'entries' | 'papers',
  ids: readonly string[] | null,
  known: KnownHappened,
): Promise<readonly unknown[]> {
  const isNew = (id: unknown): id is string =>
    typeof id === 'string' && !known[table].has(id) && !known.unreadableHappened.has(id);
  if (ids === null && known[table].size === 0) return tx.all(table);
  const asked = (ids ?? (await tx.keys(table))).filter(isNew);
  const rows = asked.length === 0 ? [] : await tx.get(table, asked);
  return rows.filter((row) => row !== undefined);
}

/** Each is written once: what is here already is the same. */
function withMore<Item extends { readonly id: string }>(
  before: ReadonlyMap<string, Item>,
  more: readonly Item[] = [],
): ReadonlyMap<string, Item> {
  const fresh = more.filter(({ id }) => !before.has(id));
  return fresh.length === 0 ? before : new Map([...before, ...fresh.map((item) => [item.id, item] as const)]);
}

const sameDevice = (before: Device | null, now: Device | null): Device | null =>
  now === null || (before?.id === now.id && before.letter === now.letter) ? before : now;

/** A record set aside is shown as unreadable even if a later build could read it: its place is taken. */
function asideRecord(row: unknown, registry: Registry): readonly UnreadableRecord[] {
  if (!isPlainObject(row)) return [];
  if (isWrittenOnce(row.raw)) {
    return [{ state: 'unreadable', ...claimsOf(row.raw), raw: row.raw, findings: [{ code: 'numberTaken' }] }];
  }
  const reading = readDocument(row.raw, registry);
  return reading.state === 'unreadable'
    ? [reading]
    : [
        {
          state: 'unreadable',
          id: reading.document.id,
          kind: reading.document.kind,
          raw: row.raw,
          findings: [],
        },
      ];
}
