import { answered, completed } from './answered';
import { type Backend, backendTables } from './backend';
import { heldBack } from './heldBack';
import { type SaveFailure, saveFailureOf } from './saveFailure';

/** What the browser offers; asked for late, because merely naming it can throw where it is forbidden. */
export interface DeviceDatabase {
  readonly indexedDB: IDBFactory | undefined;
}

export type BackendOpening =
  | { readonly state: 'open'; readonly backend: Backend }
  /** Nothing can be kept on this device; the app still works in memory. */
  | { readonly state: 'unavailable'; readonly why: 'noStorage' | 'storageForbidden' }
  /** There may be documents in the store, so nothing else may stand in for it. */
  | { readonly state: 'failed'; readonly why: 'newerStore' | 'diskFull' | 'cannotOpen' };

interface DeviceBackendOptions {
  readonly name: string;
  readonly database: () => DeviceDatabase;
  /** The store is not to be had yet; most likely another tab still holds an older version of it. */
  readonly onWaiting: () => void;
  /** The store was closed from outside. */
  readonly onClosed: (why: Extract<SaveFailure, 'newerTabOpen' | 'connectionLost'>) => void;
  /** What the store is brought up to; another than the shipped one stands for another build. */
  readonly layout?: StoreLayout;
}

/**
 * The tables of the store, each with its key. A later build adds tables, or rows an earlier one cannot read, and a version;
 * it takes none away.
 */
export interface StoreLayout {
  /** Counted as the browser does: the first builds went up by tens, and so does this. */
  readonly version: number;
  readonly tables: Readonly<Record<string, string>>;
}

const shipped: StoreLayout = { version: 40, tables: backendTables };

/** A store that is silent this long is taken to wait for another tab, in milliseconds. */
const PATIENCE_MS = 4000;

/** Opens the device's store, never in an older version than it has and never without telling why it waits. */
export async function openDeviceBackend(options: DeviceBackendOptions): Promise<BackendOpening> {
  const impatience = setTimeout(options.onWaiting, PATIENCE_MS);
  try {
    const { indexedDB } = options.database();
    if (indexedDB === undefined || indexedDB === null) return { state: 'unavailable', why: 'noStorage' };
    const db = await opened(indexedDB, options);
    db.onversionchange = ({ newVersion }) => {
      db.close();
      options.onClosed(newVersion === null ? 'connectionLost' : 'newerTabOpen');
    };
    return { state: 'open', backend: backendOn(db) };
  } catch (error) {
    return openingFailure(error);
  } finally {
    clearTimeout(impatience);
  }
}

function opened(
  indexedDB: IDBFactory,
  { name, onWaiting, layout = shipped }: DeviceBackendOptions,
): Promise<IDBDatabase> {
  const request = indexedDB.open(name, layout.version);
  request.onblocked = onWaiting;
  request.onupgradeneeded = () => {
    const db = request.result;
    for (const [table, keyPath] of Object.entries(layout.tables)) {
      if (!db.objectStoreNames.contains(table)) db.createObjectStore(table, { keyPath });
    }
  };
  return answered(request);
}

function backendOn(db: IDBDatabase): Backend {
  const tables = Object.keys(backendTables);
  return {
    transact: async (mode, work) => {
      const transaction = db.transaction(tables, mode === 'read' ? 'readonly' : 'readwrite', {
        durability: mode === 'writeStrict' ? 'strict' : 'relaxed',
      });
      const done = completed(transaction);
      // Waited for below; where the work fails first, that is told.
      done.catch(() => undefined);
      try {
        const { tx, writes } = heldBack({
          get: (table, keys) => {
            const store = transaction.objectStore(table);
            return Promise.all(keys.map((key): Promise<unknown> => answered(store.get(key))));
          },
          all: (table) => answered(transaction.objectStore(table).getAll()),
          keys: (table) => answered(transaction.objectStore(table).getAllKeys()),
        });
        const outcome = await work(tx);
        // A refused one ends the transaction, which then knows why.
        for (const { table, key, row } of writes()) {
          const store = transaction.objectStore(table);
          if (row === null) store.delete(key);
          else store.put(row);
        }
        await done;
        return outcome;
      } catch (error) {
        await ended(transaction, done);
        // A request that was under way knows only that all was aborted; the transaction knows why.
        throw new FailedTransactionError([error, transaction.error]);
      }
    },
    close: () => db.close(),
  };
}

/** Ends a transaction in which something failed, so that nothing of it is written, and waits until it has. */
async function ended(transaction: IDBTransaction, done: Promise<void>): Promise<void> {
  try {
    transaction.abort();
  } catch {
    // The browser has ended it already.
  }
  await done.catch(() => undefined);
}

class FailedTransactionError extends Error {
  override readonly name = 'FailedTransactionError';
  readonly failures: readonly unknown[];
  constructor(failures: readonly unknown[]) {
    super('A transaction of the store failed; `failures` says why.');
    this.failures = failures;
  }
}

function openingFailure(error: unknown): BackendOpening {
  const why = saveFailureOf(error);
  if (why === 'newerStore') return { state: 'failed', why };
  if (why === 'noStorage' || why === 'storageForbidden') return { state: 'unavailable', why };
  // Firefox answers so where history is never kept.
  if (why === 'connectionLost') return { state: 'unavailable', why: 'storageForbidden' };
  return { state: 'failed', why: why === 'diskFull' ? 'diskFull' : 'cannotOpen' };
}
