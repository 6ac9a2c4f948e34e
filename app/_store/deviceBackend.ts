import { Dexie, type Transaction } from 'dexie';
import { type Backend, type BackendTx, backendTables } from './backend';
import { type SaveFailure, saveFailureOf } from './saveFailure';
import { storeVersion } from './storeVersion';

/** What the browser offers; asked for late, because merely naming it can throw where it is forbidden. */
export interface DeviceDatabase {
  readonly indexedDB: IDBFactory | undefined;
  readonly IDBKeyRange: typeof IDBKeyRange | undefined;
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
  /** Tables by version; a later build adds a version and changes none that was shipped. */
  readonly versions?: BackendVersions;
}
export type BackendVersions = readonly {
  readonly version: number;
  readonly tables: Readonly<Record<string, string>>;
}[];

const { files, entries, papers, exchanged, ...firstTables } = backendTables;
const shippedVersions: BackendVersions = [
  { version: 1, tables: firstTables },
  { version: 2, tables: { files } },
  { version: 3, tables: { entries, papers, exchanged } },
];

/** A store that is silent this long is taken to wait for another tab, in milliseconds. */
const PATIENCE_MS = 4000;

/** Opens the device's store, never in an older version than it has and never without telling why it waits. */
export async function openDeviceBackend(options: DeviceBackendOptions): Promise<BackendOpening> {
  const impatience = setTimeout(options.onWaiting, PATIENCE_MS);
  try {
    const { indexedDB, IDBKeyRange } = options.database();
    if (indexedDB === undefined || indexedDB === null || IDBKeyRange === undefined) {
      return { state: 'unavailable', why: 'noStorage' };
    }
    const versions = options.versions ?? shippedVersions;
    const newest = Math.max(...versions.map(({ version }) => version));
    // Dexie opens a newer store as if it were its own and may even alter it: look before it does.
    if ((await storeVersion(indexedDB, options.name)) > newest) return newerStore;
    const connect = (durability: Durability) => {
      const db = connection(options, { indexedDB, IDBKeyRange }, durability);
      for (const { version, tables } of versions) db.version(version).stores(tables);
      // Another tab may bring a newer store between the look and the opening, and whenever it is opened again.
      db.on('ready', () => refuseNewer(db, newest), true);
      return db;
    };
    const db = connect('relaxed');
    await db.open();
    return { state: 'open', backend: backendOn(db, () => connect('strict')) };
  } catch (error) {
    return openingFailure(error);
  } finally {
    clearTimeout(impatience);
  }
}

type Durability = 'relaxed' | 'strict';

const newerStore: BackendOpening = { state: 'failed', why: 'newerStore' };
/** Dexie multiplies its versions by ten for the browser's own number. */
const DEXIE_FACTOR = 10;

class NewerStoreError extends Error {
  override readonly name = 'NewerStoreError';
}

function refuseNewer(db: Dexie, newest: number): void {
  const found = db.backendDB().version / DEXIE_FACTOR;
  if (found > newest) {
    throw new NewerStoreError(`The store has version ${found}; this build knows up to ${newest}.`);
  }
}

// Dexie writes a trace of every refused write to the console of a local page; the screens tell instead.
Dexie.debug = false;

function connection(
  { name, onWaiting, onClosed }: DeviceBackendOptions,
  database: { readonly indexedDB: IDBFactory; readonly IDBKeyRange: typeof IDBKeyRange },
  durability: Durability,
): Dexie {
  const db = new Dexie(name, { ...database, autoOpen: false, chromeTransactionDurability: durability });
  // Returning false keeps Dexie's own handlers, which write to the console, from running as well.
  db.on('blocked', () => {
    onWaiting();
    return false;
  });
  db.on('versionchange', (event) => {
    db.close();
    // The strict connection lives for one transaction; the lasting one tells.
    if (durability === 'relaxed') onClosed(event.newVersion === null ? 'connectionLost' : 'newerTabOpen');
    return false;
  });
  return db;
}

function backendOn(db: Dexie, connectStrict: () => Dexie): Backend {
  const tables = Object.keys(backendTables);
  const txOf = (from: Transaction): BackendTx => ({
    get: (table, keys) => from.table(table).bulkGet([...keys]),
    all: (table) => from.table(table).toArray(),
    keys: (table) => from.table(table).toCollection().primaryKeys(),
    put: (table, rows) =>
      from
        .table(table)
        .bulkPut([...rows])
        .then(() => undefined),
    drop: (table, keys) => from.table(table).bulkDelete([...keys]),
  });
  const within = async <Outcome>(
    from: Dexie,
    mode: 'r' | 'rw',
    work: (tx: BackendTx) => Promise<Outcome>,
  ) => {
    let transaction: Transaction | undefined;
    try {
      return await from.transaction(mode, tables, (opened) => {
        transaction = opened;
        return work(txOf(opened));
      });
    } catch (error) {
      // A request that was under way knows only that all was aborted; the transaction knows why.
      throw new FailedTransactionError([error, transaction?.idbtrans?.error]);
    }
  };
  return {
    transact: async (mode, work) => {
      if (mode === 'read') return within(db, 'r', work);
      if (mode === 'write') return within(db, 'rw', work);
      // The browser takes the durability per transaction, Dexie per connection.
      if (!db.isOpen()) throw new Dexie.DatabaseClosedError();
      const strict = connectStrict();
      await strict.open();
      try {
        return await within(strict, 'rw', work);
      } finally {
        strict.close();
      }
    },
    close: () => db.close(),
  };
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
  if (why === 'newerStore') return newerStore;
  if (why === 'noStorage' || why === 'storageForbidden') return { state: 'unavailable', why };
  // Firefox answers so where history is never kept.
  if (why === 'connectionLost') return { state: 'unavailable', why: 'storageForbidden' };
  return { state: 'failed', why: why === 'diskFull' ? 'diskFull' : 'cannotOpen' };
}
