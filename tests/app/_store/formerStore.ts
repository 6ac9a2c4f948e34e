import { IDBFactory } from 'fake-indexeddb';
import { backendTables } from '@/app/_backend/backend';
import { openDeviceBackend } from '@/app/_backend/deviceBackend';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStoreOptions } from '@/app/_store/documentStore';
import { type EntryBodies, entryKinds } from '@/lib/kinds/entryKinds';
import { type DocumentBodies, kinds } from '@/lib/kinds/kinds';
import { type PaperBodies, paperKinds } from '@/lib/kinds/paperKinds';
import { isPlainObject } from '@/lib/merging/sameValue';
import dump from '@/tests/fixtures/stored/storeBeforeEntries.json' with { type: 'json' };
import { STORE } from './tabs';

/* A store as the build before entries kept it, saved from a browser: every row of every table. */

export const formerTables = dump.tables;

const bytesOf = (text: string) => Uint8Array.from(Buffer.from(text, 'base64'));

const rowsIn = (table: keyof typeof formerTables): readonly unknown[] =>
  table === 'files'
    ? formerTables.files.map((file) => ({ ...file, content: bytesOf(file.content.base64) }))
    : formerTables[table];

/**
 * A device that the build before has left as it was.
 *
 * @param from the first step of the history that is there
 */
export const formerDevice = (from = 1): Promise<IDBFactory> => {
  const factory = new IDBFactory();
  const tables = ['documents', 'steps', 'contents', 'meta', 'aside', 'files'] as const;
  return new Promise((resolve) => {
    const request = factory.open(STORE, dump.version);
    request.onupgradeneeded = () => {
      for (const table of tables) {
        const store = request.result.createObjectStore(table, { keyPath: backendTables[table] });
        for (const row of rowsIn(table)) {
          const isForgotten = isPlainObject(row) && typeof row.seq === 'number' && row.seq < from;
          if (!isForgotten) store.put(row);
        }
      }
    };
    request.onsuccess = () => {
      request.result.close();
      resolve(factory);
    };
  });
};

/** This build, in a tab on such a device. */
export const tabOn = (
  factory: IDBFactory,
  options: Partial<DocumentStoreOptions<DocumentBodies, PaperBodies, EntryBodies>> = {},
) =>
  createDocumentStore<DocumentBodies>({
    registry: kinds,
    paperKinds,
    entryKinds,
    tab: 'here',
    now: () => 1_800_000_000_000,
    openBackend: (on) => openDeviceBackend({ ...on, name: STORE, database: () => ({ indexedDB: factory }) }),
    openMessages: () => ({ tell: () => undefined, close: () => undefined }),
    watchPage: () => () => undefined,
    ...options,
  });
