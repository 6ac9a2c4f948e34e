import { failed, ok, type Result } from '@/shared/result';
import { byteReader } from './byteReader';
import { type PixelSize, type RasterHeader, uprightDensity, uprightSize } from './pictureHeader';
import type { PictureProblem } from './pictureProblem';
import { noExif, readExif } from './readExif';
import { riffChunk } from './riffChunk';

/* RFC 9649: the container, its flags, and the size fields of both ways of packing. */
const FLAG = { animation: 0x02, alpha: 0x10, profile: 0x20 } as const;
const FIRST_CHUNK = 12;

interface Frame {
  readonly size: PixelSize;
  readonly mayBeClear: boolean;
}

/** @returns what the chunks of a WebP tell. */
export function webpHeader(bytes: Uint8Array): Result<RasterHeader, PictureProblem> {
  const reader = byteReader(bytes);
  const type = reader.word(FIRST_CHUNK, 4);
  const body = FIRST_CHUNK + 8;
  const isExtended = type === 'VP8X';
  const flags = isExtended ? (reader.u8(body) ?? 0) : 0;
  const frame = firstFrame(type, bytes.subarray(body));
  if (frame === 'cut') return failed({ kind: 'cutShort', format: 'webp', bytes: bytes.length });
  if (frame === 'damaged') return failed({ kind: 'damaged', format: 'webp', part: type });

  const exifAt = isExtended ? riffChunk('EXIF', bytes) : null;
  const exif = exifAt === null ? noExif : readExif(bytes.subarray(exifAt.at, exifAt.at + exifAt.length));
  const place = exif.orientationPlace;
  return ok({
    kind: 'raster',
    format: 'webp',
    stored: frame.size,
    size: uprightSize(frame.size, exif.orientation),
    orientation: exif.orientation,
    orientationPlace: place === null || exifAt === null ? null : { ...place, at: place.at + exifAt.at },
    density: uprightDensity(exif.density, exif.orientation),
    bitsPerChannel: 8,
    mayBeClear: frame.mayBeClear,
    colourTag: (flags & FLAG.profile) !== 0 ? 'profile' : exif.isSrgb ? 'sRGB' : 'untagged',
    isAnimated: (flags & FLAG.animation) !== 0,
  });
}

function firstFrame(type: string, data: Uint8Array): Frame | 'cut' | 'damaged' {
  const { u8, u16, u32, word } = byteReader(data);
  const has = (length: number) => data.length >= length;
  switch (type) {
    case 'VP8X': {
      if (!has(10)) return 'cut';
      const three = (at: number) => (u16(at, true) ?? 0) + (u8(at + 2) ?? 0) * 0x10000 + 1;
      return {
        size: { width: three(4), height: three(7) },
        mayBeClear: ((u8(0) ?? 0) & FLAG.alpha) !== 0,
      };
    }
    case 'VP8L': {
      if (!has(5)) return 'cut';
      const packed = u32(1, true) ?? 0;
      const size = { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
      return u8(0) === 0x2f ? { size, mayBeClear: ((packed >>> 28) & 1) === 1 } : 'damaged';
    }
    case 'VP8 ': {
      if (!has(10)) return 'cut';
      const size = { width: (u16(6, true) ?? 0) & 0x3fff, height: (u16(8, true) ?? 0) & 0x3fff };
      const isWellFormed = word(3, 3) === '\x9d\x01\x2a' && size.width > 0 && size.height > 0;
      return isWellFormed ? { size, mayBeClear: false } : 'damaged';
    }
    default:
      return data.length === 0 ? 'cut' : 'damaged';
  }
}
