import { type BackendTable, type BackendTx, backendTables, type Row } from './backend';

type Key = string | number;

/** What is to be written under a key; null where the row goes. */
interface HeldWrite {
  readonly table: BackendTable;
  readonly key: Key;
  readonly row: Row | null;
}

type Reads = Pick<BackendTx, 'get' | 'all' | 'keys'>;

/**
 * Holds back what is written until all of the work is done, and lets the work read what it has written. A browser ends
 * a transaction that waits for anything else; then nothing of the work has been written.
 */
export function heldBack(reads: Reads): {
  readonly tx: BackendTx;
  readonly writes: () => readonly HeldWrite[];
} {
  const tables = new Map<BackendTable, Map<Key, Row | null>>();
  const heldIn = (table: BackendTable): Map<Key, Row | null> => {
    const held = tables.get(table) ?? new Map<Key, Row | null>();
    tables.set(table, held);
    return held;
  };
  const tx: BackendTx = {
    get: async (table, keys) => {
      const found = await reads.get(table, keys);
      const held = heldIn(table);
      return keys.map((key, at) => (held.has(key) ? (held.get(key) ?? undefined) : found[at]));
    },
    all: async (table) => {
      const found = await reads.all(table);
      const held = heldIn(table);
      if (held.size === 0) return found;
      return [...found.filter((row) => !held.has(keyOf(table, row))), ...present(held).map(([, row]) => row)];
    },
    keys: async (table) => {
      const found = await reads.keys(table);
      const held = heldIn(table);
      if (held.size === 0) return found;
      return [...found.filter((key) => !isKey(key) || !held.has(key)), ...present(held).map(([key]) => key)];
    },
    put: async (table, rows) => {
      const held = heldIn(table);
      for (const row of rows) held.set(keyOf(table, row), row);
    },
    drop: async (table, keys) => {
      const held = heldIn(table);
      for (const key of keys) held.set(key, null);
    },
  };
  return {
    tx,
    writes: () =>
      [...tables].flatMap(([table, held]) => [...held].map(([key, row]) => ({ table, key, row }))),
  };
}

const present = (held: ReadonlyMap<Key, Row | null>): readonly (readonly [Key, Row])[] =>
  [...held].flatMap(([key, row]) => (row === null ? [] : [[key, row] as const]));

const isKey = (key: unknown): key is Key => typeof key === 'string' || typeof key === 'number';

function keyOf(table: BackendTable, row: unknown): Key {
  const key: unknown = typeof row === 'object' && row !== null ? Reflect.get(row, backendTables[table]) : row;
  if (isKey(key)) return key;
  throw new TypeError(`A row of ${table} has no key.`);
}
