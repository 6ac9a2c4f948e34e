import { byteReader } from './byteReader';

export interface PngChunk {
  readonly type: string;
  /** Where the chunk begins, with its length. */
  readonly at: number;
  /** Bytes of its data. */
  readonly length: number;
}

const SIGNATURE_BYTES = 8;
/** Length, type and check sum around the data. */
const FRAME_BYTES = 12;
/** From the start of a chunk to its data. */
const DATA_AT = 8;

/**
 * Lists the chunks of a PNG without reading into them.
 *
 * @returns the chunks, and whether the closing IEND was reached: a file cut short lacks it
 */
export function pngChunks(bytes: Uint8Array): {
  readonly chunks: readonly PngChunk[];
  readonly isWhole: boolean;
} {
  const reader = byteReader(bytes);
  const chunks: PngChunk[] = [];
  for (let at = SIGNATURE_BYTES; ; ) {
    const length = reader.u32(at);
    if (length === null || at + FRAME_BYTES + length > bytes.length) return { chunks, isWhole: false };
    const type = reader.word(at + 4, 4);
    chunks.push({ type, at, length });
    if (type === 'IEND') return { chunks, isWhole: true };
    at += FRAME_BYTES + length;
  }
}

export const chunkData = (bytes: Uint8Array, { at, length }: PngChunk): Uint8Array =>
  bytes.subarray(at + DATA_AT, at + DATA_AT + length);

/** The packed pixels of a PNG: one zlib stream, in the pieces it is stored in. */
export const packedPixels = (bytes: Uint8Array): readonly Uint8Array[] =>
  pngChunks(bytes)
    .chunks.filter(({ type }) => type === 'IDAT')
    .map((chunk) => chunkData(bytes, chunk));
