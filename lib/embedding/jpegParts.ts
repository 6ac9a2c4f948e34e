import { byteReader } from '@/lib/picture/byteReader';
import { HUFFMAN_FRAMES, MARKER } from '@/lib/picture/jpeg/jpegMarkers';
import { jpegSegments } from '@/lib/picture/jpeg/jpegSegments';

/** What the segments before the pixels of a JPEG say of how its colours are stored. */
interface JpegParts {
  readonly channels: 1 | 3;
  /** Red, green and blue stored as such, and no marker that says so. */
  readonly isPlainRgb: boolean;
}

export function jpegParts(bytes: Uint8Array): JpegParts {
  let ids = '';
  let channels: 1 | 3 = 3;
  let saysHow = false;
  for (const { marker, data } of jpegSegments(bytes)) {
    const { u8, word } = byteReader(data);
    if (HUFFMAN_FRAMES.includes(marker)) {
      channels = u8(5) === 1 ? 1 : 3;
      ids = word(6, 1) + word(9, 1) + word(12, 1);
    } else if (
      (marker === MARKER.jfif && word(0, 5) === 'JFIF\0') ||
      (marker === MARKER.adobe && word(0, 5) === 'Adobe')
    ) {
      saysHow = true;
    }
  }
  return { channels, isPlainRgb: channels === 3 && !saysHow && ids === 'RGB' };
}
