/** Where an archive says that an entry lies. Several such places may be told for one entry; its content decides. */
export interface ArchiveEntry {
  readonly name: string;
  readonly isEncrypted: boolean;
  readonly method: number;
  /** Where its bytes begin. */
  readonly from: number;
  /** Bytes as they lie there; null where only the end of the packed bytes themselves tells. */
  readonly packed: number | null;
  /** Bytes unpacked; null where that stands behind them. */
  readonly bytes: number | null;
  readonly crc: number | null;
  /** Where its own header begins. */
  readonly at: number;
  /** Whether a header with its name stands there; the directory alone may be damaged. */
  readonly hasHeader: boolean;
}
