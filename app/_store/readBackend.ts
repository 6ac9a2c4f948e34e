import { readDocument, type UnreadableRecord } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { isPlainObject } from '@/lib/stored/sameValue';
import { readSteps, type Step } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';
import type { BackendTx } from './backend';
import type { TabState } from './tabState';

/** What was found in the store. */
interface BackendReading {
  readonly documents: readonly Stored[];
  readonly unreadable: readonly UnreadableRecord[];
  readonly aside: readonly UnreadableRecord[];
  readonly steps: readonly Step[];
}

/** Reads documents and history, every record through its schema; all documents where no ids are given. */
export async function readBackend(
  tx: BackendTx,
  registry: Registry,
  ids: readonly string[] | null,
): Promise<BackendReading> {
  const rows = ids === null ? await tx.all('documents') : await tx.get('documents', ids);
  const steps = readSteps(await tx.all('steps'));
  const aside = await tx.all('aside');
  const readings = rows.filter((row) => row !== undefined).map((row) => readDocument(row, registry));
  return {
    documents: readings.flatMap((reading) => (reading.state === 'readable' ? [reading.document] : [])),
    unreadable: readings.flatMap((reading) => (reading.state === 'unreadable' ? [reading] : [])),
    aside: aside.flatMap((row) => asideRecord(row, registry)),
    steps,
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
): Pick<TabState, 'documents' | 'unreadable' | 'aside' | 'steps'> {
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
  return {
    documents: all,
    unreadable: lost,
    aside: rest.aside ?? tabState.aside,
    steps: rest.steps ?? tabState.steps,
  };
}

/** A record set aside is shown as unreadable even if a later build could read it: its place is taken. */
function asideRecord(row: unknown, registry: Registry): readonly UnreadableRecord[] {
  if (!isPlainObject(row)) return [];
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
