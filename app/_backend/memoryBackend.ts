import { type Backend, type BackendTable, type BackendTx, backendTables, type Row } from './backend';

type Tables = Readonly<Record<BackendTable, ReadonlyMap<unknown, unknown>>>;

/** Keeps rows until the page is left, for browsers that keep nothing on the device. */
export function memoryBackend(): Backend {
  let tables: Tables = eachTable(() => new Map());
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
  const draft = eachTable((table) => new Map(tables[table]));
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

const eachTable = <Value>(make: (table: BackendTable) => Value): Record<BackendTable, Value> => ({
  documents: make('documents'),
  steps: make('steps'),
  contents: make('contents'),
  meta: make('meta'),
  aside: make('aside'),
  files: make('files'),
  entries: make('entries'),
  papers: make('papers'),
  exchanged: make('exchanged'),
});
