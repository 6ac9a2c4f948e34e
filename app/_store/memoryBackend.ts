import { type Backend, type BackendTable, type BackendTx, backendTables, type Row } from './backend';

type Tables = Readonly<Record<BackendTable, ReadonlyMap<unknown, unknown>>>;

/** Keeps rows until the page is left, for browsers that keep nothing on the device. */
export function memoryBackend(): Backend {
  let tables: Tables = {
    documents: new Map(),
    steps: new Map(),
    contents: new Map(),
    meta: new Map(),
    aside: new Map(),
    files: new Map(),
  };
  let queue: Promise<unknown> = Promise.resolve();

  return {
    transact: (_mode, work) => {
      // One after the other, on a draft that counts only when all the work is done.
      const turn = queue.then(async () => {
        const draft = draftOf(tables);
        const outcome = await work(draft.tx);
        tables = draft.tables;
        return outcome;
      });
      queue = turn.catch(() => undefined);
      return turn;
    },
    close: () => undefined,
  };
}

function draftOf(tables: Tables): { readonly tx: BackendTx; readonly tables: Tables } {
  const draft = {
    documents: new Map(tables.documents),
    steps: new Map(tables.steps),
    contents: new Map(tables.contents),
    meta: new Map(tables.meta),
    aside: new Map(tables.aside),
    files: new Map(tables.files),
  };
  const tx: BackendTx = {
    get: async (table, keys) => keys.map((key) => draft[table].get(key)),
    all: async (table) => [...draft[table].values()],
    keys: async (table) => [...draft[table].keys()],
    put: async (table, rows) => {
      for (const row of rows) draft[table].set(keyOf(table, row), row);
    },
    drop: async (table, keys) => {
      for (const key of keys) draft[table].delete(key);
    },
  };
  return { tx, tables: draft };
}

const keyOf = (table: BackendTable, row: Row): unknown => row[backendTables[table]];
