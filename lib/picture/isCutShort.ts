import { MARKER } from '@/lib/picture/jpeg/jpegMarkers';
import { jpegSegments } from '@/lib/picture/jpeg/jpegSegments';
import { byteReader } from './byteReader';
import { gifFrames } from './gifHeader';
import type { PictureFormat } from './pictureHeader';
import { pngChunks } from './pngChunks';

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
  const from = pixelsFrom(bytes);
  for (let end = bytes.length - 1; end > from; end -= 1) {
    if (bytes[end] === MARKER.end && bytes[end - 1] === 0xff) return true;
  }
  return false;
}

function pixelsFrom(bytes: Uint8Array): number {
  const segments = jpegSegments(bytes);
  for (;;) {
    const { done, value } = segments.next();
    if (done === true) return value.at;
  }
}
