/** Tables of the store. Documents, steps and their content are rows of their own shapes; meta holds marks. */
export const backendTables = {
  documents: 'id',
  steps: 'seq',
  contents: 'seq',
  meta: 'key',
  /** Unreadable records moved out of the way of a restored document of the same id. */
  aside: 'key',
  /** The maker's own picture files and papers, whole, each under its SHA-256. */
  files: 'id',
  /** What happened, each once and for good. */
  entries: 'id',
  /** What went out, each once and for good. */
  papers: 'id',
  /** Drafts as they last went to another device or into a copy: what a draft that comes back is held against. */
  exchanged: 'id',
} as const;
export type BackendTable = keyof typeof backendTables;

/** Rows are unknown: whoever reads them parses them. */
export type Row = Readonly<Record<string, unknown>>;

/**
 * What can be done inside one transaction. Nothing but these may be awaited there: anything else would let
 * the browser end the transaction halfway.
 */
export interface BackendTx {
  /** The rows under the keys, `undefined` where there is none. */
  get(table: BackendTable, keys: readonly (string | number)[]): PromiseLike<readonly unknown[]>;
  all(table: BackendTable): PromiseLike<readonly unknown[]>;
  /** Only the keys, for rows too large to look at all. */
  keys(table: BackendTable): PromiseLike<readonly unknown[]>;
  put(table: BackendTable, rows: readonly Row[]): PromiseLike<void>;
  drop(table: BackendTable, keys: readonly (string | number)[]): PromiseLike<void>;
}

/** `writeStrict` answers only once the rows are on the disk, not merely with the operating system. */
export type BackendMode = 'read' | 'write' | 'writeStrict';

/** A place that keeps rows: the device's database, or memory where there is none. */
export interface Backend {
  /** Does all of the work or none of it. */
  transact<Outcome>(mode: BackendMode, work: (tx: BackendTx) => Promise<Outcome>): Promise<Outcome>;
  close(): void;
}
