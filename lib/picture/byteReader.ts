/** Reads numbers and words out of a file; past its end every read gives null, never a wrong number. */
export interface ByteReader {
  readonly length: number;
  readonly u8: (at: number) => number | null;
  readonly u16: (at: number, littleEnd?: boolean) => number | null;
  readonly u32: (at: number, littleEnd?: boolean) => number | null;
  /** Text of one byte a letter. */
  readonly word: (at: number, length: number) => string;
}

/** @returns a reader over the bytes, big end first unless told otherwise. */
export function byteReader(bytes: Uint8Array): ByteReader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const inside = (at: number, length: number) => at >= 0 && at + length <= bytes.length;
  return {
    length: bytes.length,
    u8: (at) => (inside(at, 1) ? view.getUint8(at) : null),
    u16: (at, littleEnd = false) => (inside(at, 2) ? view.getUint16(at, littleEnd) : null),
    u32: (at, littleEnd = false) => (inside(at, 4) ? view.getUint32(at, littleEnd) : null),
    word: (at, length) => String.fromCharCode(...bytes.subarray(at, at + length)),
  };
}
