/** Bytes that are fetched piece by piece, such as a file's. */
export interface ByteSource {
  readonly size: number;
  /** @returns the bytes from one place up to another; fewer where the source ends before. */
  readonly read: (from: number, to: number) => Promise<Uint8Array>;
}

/** So much is in hand at once. */
export const PIECE_BYTES = 1 << 20;

/** @returns a source that lies in memory already. */
export const sourceOf = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (from, to) => bytes.subarray(from, to),
});

/** Goes through a stretch of a source, a piece at a time. */
export async function* piecesOf(source: ByteSource, from: number, to: number): AsyncGenerator<Uint8Array> {
  for (let at = from; at < to; at += PIECE_BYTES) yield source.read(at, Math.min(to, at + PIECE_BYTES));
}
