import { byteReader } from '@/lib/picture/byteReader';
import { jpegSegments } from '@/lib/picture/jpeg/jpegSegments';

/** What the segments before the pixels of a JPEG say of how its colours are stored. */
interface JpegParts {
  readonly channels: 1 | 3;
  /** Red, green and blue stored as such, and no marker that says so. */
  readonly isPlainRgb: boolean;
}

/* Markers of ITU-T T.81, table B.1. */
const FRAMES: readonly number[] = [0xc0, 0xc1, 0xc2];
const APP = { jfif: 0xe0, adobe: 0xee } as const;

export function jpegParts(bytes: Uint8Array): JpegParts {
  let ids = '';
  let channels: 1 | 3 = 3;
  let saysHow = false;
  for (const { marker, data } of jpegSegments(bytes)) {
    const { u8, word } = byteReader(data);
    if (FRAMES.includes(marker)) {
      channels = u8(5) === 1 ? 1 : 3;
      ids = word(6, 1) + word(9, 1) + word(12, 1);
    } else if (
      (marker === APP.jfif && word(0, 5) === 'JFIF\0') ||
      (marker === APP.adobe && word(0, 5) === 'Adobe')
    ) {
      saysHow = true;
    }
  }
  return { channels, isPlainRgb: channels === 3 && !saysHow && ids === 'RGB' };
}
