/** Tables of the store. Documents, steps and their content are rows of their own shapes; meta holds marks. */
export const shelfTables = {
  documents: 'id',
  steps: 'seq',
  contents: 'seq',
  meta: 'key',
  /** Unreadable records moved out of the way of a restored document of the same id. */
  aside: 'key',
  /** The maker's own picture files, whole. Documents and steps name them by id. */
  files: 'id',
} as const;
export type ShelfTable = keyof typeof shelfTables;

/** Rows are unknown: whoever reads them parses them. */
export type Row = Readonly<Record<string, unknown>>;

/**
 * What can be done inside one transaction. Nothing but these may be awaited there: anything else would let
 * the browser end the transaction halfway.
 */
export type ShelfTx = {
  /** The rows under the keys, `undefined` where there is none. */
  get(table: ShelfTable, keys: readonly (string | number)[]): PromiseLike<readonly unknown[]>;
  all(table: ShelfTable): PromiseLike<readonly unknown[]>;
  /** Only the keys, for rows too large to look at all. */
  keys(table: ShelfTable): PromiseLike<readonly unknown[]>;
  put(table: ShelfTable, rows: readonly Row[]): PromiseLike<void>;
  drop(table: ShelfTable, keys: readonly (string | number)[]): PromiseLike<void>;
};

/** `writeStrict` answers only once the rows are on the disk, not merely with the operating system. */
export type ShelfMode = 'read' | 'write' | 'writeStrict';

/** A place that keeps rows: the device's database, or memory where there is none. */
export type Shelf = {
  /** Does all of the work or none of it. */
  transact<Outcome>(mode: ShelfMode, work: (tx: ShelfTx) => Promise<Outcome>): Promise<Outcome>;
  close(): void;
};
