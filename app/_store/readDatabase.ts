import { readDocument, type UnreadableRecord } from '@/lib/stored/readDocument';
import type { Registry } from '@/lib/stored/registry';
import { isPlainObject } from '@/lib/stored/sameValue';
import { readSteps, type Step } from '@/lib/stored/step';
import type { Stored } from '@/shared/schemas/stored';
import type { ShelfTx } from './database';
import type { Held } from './tabState';

/** What was found in the store. */
export type ShelfReading = {
  readonly documents: readonly Stored[];
  readonly unreadable: readonly UnreadableRecord[];
  readonly aside: readonly UnreadableRecord[];
  readonly steps: readonly Step[];
};

/** Reads documents and history, every record through its schema; all documents where no ids are given. */
export const readShelf = async (
  tx: ShelfTx,
  registry: Registry,
  ids: readonly string[] | null,
): Promise<ShelfReading> => {
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
};

/** Takes a reading into what the tab holds. A slow read may be older than what is held by now: newer stays. */
export const absorb = (
  held: Held,
  {
    documents,
    unreadable,
    ...rest
  }: Partial<Omit<ShelfReading, 'documents'>> & Pick<ShelfReading, 'documents'>,
): Pick<Held, 'documents' | 'unreadable' | 'aside' | 'steps'> => {
  const all = new Map(held.documents);
  const lost = new Map(held.unreadable);
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
    aside: rest.aside ?? held.aside,
    steps: rest.steps ?? held.steps,
  };
};

/** A record set aside is shown as unreadable even if a later build could read it: its place is taken. */
const asideRecord = (row: unknown, registry: Registry): readonly UnreadableRecord[] => {
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
};
