import { byteReader } from './byteReader';
import { crc32 } from './crc32';
import { chunkData, type PngChunk, pngChunks } from './pngChunks';

/** Without these the picture is another one: the critical chunks, and the clear colour. */
const NEEDED: readonly string[] = ['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS'];

/** Whether the check sum of a chunk fits its type and data. */
function isSound(bytes: Uint8Array, { at, length }: PngChunk): boolean {
  return byteReader(bytes).u32(at + 8 + length) === crc32(bytes.subarray(at + 4, at + 8 + length));
}

/** @returns the first chunk the pixels need whose check sum is wrong; null where all are right. */
export const damagedChunk = (bytes: Uint8Array): string | null =>
  pngChunks(bytes).chunks.find((chunk) => NEEDED.includes(chunk.type) && !isSound(bytes, chunk))?.type ??
  null;

/** What a PNG says beside its pixels; a chunk whose check sum is wrong says nothing, as decoders have it. */
export function pngFacts(bytes: Uint8Array): {
  readonly place: (type: string) => PngChunk | null;
  readonly data: (type: string) => Uint8Array | null;
} {
  const chunks = new Map(pngChunks(bytes).chunks.map((chunk) => [chunk.type, chunk]));
  const place = (type: string) => {
    const chunk = chunks.get(type);
    return chunk !== undefined && isSound(bytes, chunk) ? chunk : null;
  };
  return {
    place,
    data: (type) => {
      const chunk = place(type);
      return chunk === null ? null : chunkData(bytes, chunk);
    },
  };
}
