import { IDBFactory } from 'fake-indexeddb';
import { onTestFinished } from 'vitest';
import { type DeviceDatabase, openDeviceBackend, type StoreLayout } from '@/app/_backend/deviceBackend';
import type { CopyActions } from '@/app/_store/copies/copyActions';
import { createDocumentStore } from '@/app/_store/createDocumentStore';
import type { DocumentStore, DocumentStoreOptions } from '@/app/_store/documentStore';
import { openTabMessages } from '@/app/_tab/tabMessages';
import { type EntryBodies, entryKinds } from '@/lib/kinds/entryKinds';
import {
  aJobBody,
  type SmallBodies,
  type SmallJob,
  type SmallPapers,
  smallPaperKinds,
  smallRegistry,
} from '@/tests/lib/stored/smallRegistry';

export const STORE = 'documents';

export type SmallStore = DocumentStore<SmallBodies, SmallPapers>;

/** A device with its own store and its own tabs. */
export type Device = {
  readonly factory: IDBFactory;
  /** A clock that moves only when told. */
  readonly clock: { now: number };
  /** Opens the app in a tab; the same name is the same tab after a reload. */
  readonly tab: (name?: string, options?: TabOptions) => SmallStore;
};
export type TabOptions = Partial<DocumentStoreOptions<SmallBodies, SmallPapers>> & {
  readonly database?: () => DeviceDatabase;
  readonly layout?: StoreLayout;
};

let devices = 0;

export const aDevice = (): Device => {
  const factory = new IDBFactory();
  const clock = { now: 1_000_000 };
  devices += 1;
  const channel = `device-${devices}`;
  return {
    factory,
    clock,
    tab: (name = 'here', { database, layout, ...options } = {}) => {
      const store = createDocumentStore<SmallBodies, SmallPapers, EntryBodies>({
        registry: smallRegistry,
        paperKinds: smallPaperKinds,
        entryKinds,
        tab: name,
        now: () => clock.now,
        openBackend: (on) =>
          openDeviceBackend({
            ...on,
            name: STORE,
            database: database ?? (() => ({ indexedDB: factory })),
            ...(layout === undefined ? {} : { layout }),
          }),
        openMessages: (onWrote) => openTabMessages(channel, onWrote),
        watchPage: () => () => undefined,
        ...options,
      });
      onTestFinished(store.close);
      return store;
    },
  };
};

/** A tab that is open and holds one job, kept. */
export const openTabWithJob = async (device: Device, name = 'here', options: TabOptions = {}) => {
  const store = device.tab(name, options);
  await store.open();
  store.actions.edit('New job', [{ do: 'add', kind: 'job', id: 'job-1', body: aJobBody() }]);
  await store.flush();
  return store;
};

/** Opens a further tab. */
export const openTab = async (device: Device, name: string, options: TabOptions = {}) => {
  const store = device.tab(name, options);
  await store.open();
  return store;
};

export const changeJob = (
  store: SmallStore,
  change: Partial<SmallJob> | ((body: SmallJob) => SmallJob),
  key?: string,
) =>
  store.actions.edit(
    'Change job',
    [
      {
        do: 'change',
        kind: 'job',
        id: 'job-1',
        to: (body) => (typeof change === 'function' ? change(body) : { ...body, ...change }),
      },
    ],
    key,
  );

/** The body of a job as a screen shows it. */
export const jobIn = (store: SmallStore, id = 'job-1'): SmallJob | undefined =>
  store.getState().documents.find((document) => document.kind === 'job' && document.id === id)?.body as
    | SmallJob
    | undefined;

type Copying = { readonly actions: CopyActions };

/** A copy of everything, and bringing it back in the place of what is there. */
export const copyOf = async (store: Copying): Promise<Blob> =>
  (await store.actions.makeCopy('everything')).file;
export const bringBack = async (store: Copying, file: Blob) => {
  const look = await store.actions.lookAtCopy(file);
  return look.state === 'copy' ? store.actions.takeCopy('Backup', look, { mode: 'replace' }) : look;
};

/** Every row of a table, past the app. */
export const rowsOf = async (factory: IDBFactory, table: string): Promise<readonly unknown[]> => {
  const db = await nativeOpen(factory);
  const rows = await answered(db.transaction(table).objectStore(table).getAll());
  db.close();
  return rows;
};

/** Writes a row past the app, as damage or a later build would. */
export const writeRow = async (factory: IDBFactory, table: string, row: unknown): Promise<void> => {
  const db = await nativeOpen(factory);
  await answered(db.transaction(table, 'readwrite').objectStore(table).put(row));
  db.close();
};

/** Takes a row away past the app, as a browser that runs out of room may. */
export const dropRow = async (factory: IDBFactory, table: string, key: string): Promise<void> => {
  const db = await nativeOpen(factory);
  await answered(db.transaction(table, 'readwrite').objectStore(table).delete(key));
  db.close();
};

export const nativeOpen = (factory: IDBFactory, version?: number): Promise<IDBDatabase> =>
  answered(factory.open(STORE, version) as IDBOpenDBRequest);

const answered = <Answer>(request: {
  result: Answer;
  onsuccess: unknown;
  onerror: unknown;
}): Promise<Answer> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(new Error('The request failed.'));
  });
