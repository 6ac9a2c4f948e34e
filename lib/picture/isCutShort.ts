import { byteReader } from './byteReader';
import { gifFrames } from './gifHeader';
import type { PictureFormat } from './pictureHeader';
import { pngChunks } from './pngChunks';

const END_OF_IMAGE = 0xd9;
const START_OF_SCAN = 0xda;

/**
 * Whether a file ends before its picture does. Decoders show such a picture with a grey or empty rest, which
 * would be counted as if it were meant.
 *
 * @param bytes the whole file
 */
export function isCutShort(bytes: Uint8Array, format: PictureFormat): boolean {
  switch (format) {
    case 'png':
      return !pngChunks(bytes).isWhole;
    case 'jpeg':
      return !hasEndOfImage(bytes);
    case 'webp':
      return (byteReader(bytes).u32(4, true) ?? 0) + 8 > bytes.length;
    case 'gif':
      return !gifFrames(bytes).isWhole;
    case 'svg':
      // Judged with its header, which reads the whole text.
      return false;
    default:
      return format satisfies never;
  }
}

/** The mark must follow the pixels: a small preview inside the header ends with the same one. */
function hasEndOfImage(bytes: Uint8Array): boolean {
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff && bytes[at + 1] !== START_OF_SCAN) {
    const isFill = bytes[at + 1] === 0xff;
    at += isFill ? 1 : 2 + (bytes[at + 2] ?? 0) * 256 + (bytes[at + 3] ?? 0);
  }
  for (let end = bytes.length - 1; end > at; end -= 1) {
    if (bytes[end] === END_OF_IMAGE && bytes[end - 1] === 0xff) return true;
  }
  return false;
}
