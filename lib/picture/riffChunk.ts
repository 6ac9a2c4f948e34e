import { byteReader } from './byteReader';

const FIRST_CHUNK = 12;

/** @returns where the data of a chunk of a WebP stand, the first of its type; chunks are padded to an even length. */
export function riffChunk(
  type: string,
  bytes: Uint8Array,
): { readonly at: number; readonly length: number } | null {
  const reader = byteReader(bytes);
  for (let at = FIRST_CHUNK; ; ) {
    const length = reader.u32(at + 4, true);
    if (length === null) return null;
    if (reader.word(at, 4) === type) return { at: at + 8, length };
    at += 8 + length + (length % 2);
  }
}
