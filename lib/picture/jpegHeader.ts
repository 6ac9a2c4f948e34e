import { HUFFMAN_FRAMES, MARKER } from '@/lib/picture/jpeg/jpegMarkers';
import { type JpegSegment, jpegSegments } from '@/lib/picture/jpeg/jpegSegments';
import { failed, ok, type Result } from '@/shared/result';
import { MM_PER_INCH } from '@/shared/units';
import { type ByteReader, byteReader } from './byteReader';
import {
  type Density,
  type RasterHeader,
  unknownDensity,
  uprightDensity,
  uprightSize,
} from './pictureHeader';
import type { PictureProblem } from './pictureProblem';
import { type ExifFacts, noExif, readExif } from './readExif';

/* Frames that are not read: ITU-T T.81, table B.1. */
const LOSSLESS_FRAMES: readonly number[] = [0xc3, 0xc5, 0xc6, 0xc7];
const ARITHMETIC_FRAMES: readonly number[] = [0xc9, 0xca, 0xcb, 0xcd, 0xce, 0xcf];

interface Found {
  exif: ExifFacts;
  jfif: Density;
  hasProfile: boolean;
  hasAdobe: boolean;
}

/** @returns what the segments before the pixels of a JPEG tell. */
export function jpegHeader(bytes: Uint8Array): Result<RasterHeader, PictureProblem> {
  const reader = byteReader(bytes);
  const found: Found = { exif: noExif, jfif: unknownDensity, hasProfile: false, hasAdobe: false };
  const segments = jpegSegments(bytes);
  for (;;) {
    const { done, value } = segments.next();
    if (done === true) {
      return value.kind === 'cutShort'
        ? failed({ kind: 'cutShort', format: 'jpeg', bytes: bytes.length })
        : failed({ kind: 'damaged', format: 'jpeg', part: 'SOF' });
    }
    const frame = frameOf(value, reader, found);
    if (frame !== null) return frame;
    readSegment(value, found);
  }
}

function readSegment({ marker, data, at }: JpegSegment, found: Found): void {
  const { u8, u16, word } = byteReader(data);
  if (marker === MARKER.jfif && word(0, 5) === 'JFIF\0') {
    found.jfif = jfifDensity(u8(7) ?? 0, u16(8) ?? 0, u16(10) ?? 0);
  } else if (marker === MARKER.exif && word(0, 6) === 'Exif\0\0' && found.exif === noExif) {
    const exif = readExif(data);
    const place = exif.orientationPlace;
    found.exif = { ...exif, orientationPlace: place === null ? null : { ...place, at: place.at + at } };
  } else if (marker === MARKER.profile && word(0, 11) === 'ICC_PROFILE') {
    found.hasProfile = true;
  } else if (marker === MARKER.adobe && word(0, 5) === 'Adobe') {
    found.hasAdobe = true;
  }
}

/** JFIF 1.02: unit 0 tells only the shape of a pixel, 1 is the inch, 2 the centimetre. */
function jfifDensity(unit: number, x: number, y: number): Density {
  const perInch = unit === 1 ? 1 : unit === 2 ? MM_PER_INCH / 10 : null;
  if (perInch === null || x === 0 || y === 0) return unknownDensity;
  return { kind: 'declared', xPpi: x * perInch, yPpi: y * perInch, from: 'JFIF' };
}

/** The header where this marker begins the frame, a reason where such a frame is not read, else null. */
function frameOf(
  { marker, at }: JpegSegment,
  reader: ByteReader,
  found: Found,
): Result<RasterHeader, PictureProblem> | null {
  if (LOSSLESS_FRAMES.includes(marker)) return failed({ kind: 'oddCoding', coding: 'lossless' });
  if (ARITHMETIC_FRAMES.includes(marker)) return failed({ kind: 'oddCoding', coding: 'arithmetic' });
  if (!HUFFMAN_FRAMES.includes(marker)) return null;
  const bits = reader.u8(at);
  const height = reader.u16(at + 1);
  const width = reader.u16(at + 3);
  const components = reader.u8(at + 5);
  if (bits === null || height === null || width === null || components === null) {
    return failed({ kind: 'cutShort', format: 'jpeg', bytes: reader.length });
  }
  if (bits !== 8) return failed({ kind: 'oddCoding', coding: 'moreThan8Bits' });
  if (components === 4) return failed({ kind: 'cmyk', marker: found.hasAdobe ? 'adobe' : 'none' });
  if (width === 0 || height === 0 || (components !== 1 && components !== 3)) {
    return failed({ kind: 'damaged', format: 'jpeg', part: 'SOF' });
  }
  const { exif, jfif } = found;
  const stored = { width, height };
  return ok({
    kind: 'raster',
    format: 'jpeg',
    stored,
    size: uprightSize(stored, exif.orientation),
    orientation: exif.orientation,
    orientationPlace: exif.orientationPlace,
    density: uprightDensity(jfif.kind === 'declared' ? jfif : exif.density, exif.orientation),
    bitsPerChannel: 8,
    mayBeClear: false,
    colourTag: found.hasProfile ? 'profile' : exif.isSrgb ? 'sRGB' : 'untagged',
    isAnimated: false,
  });
}
