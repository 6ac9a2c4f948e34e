import { MM_PER_INCH } from '@/shared/units';
import { type ByteReader, byteReader } from './byteReader';
import { type BytePlace, type Density, type Orientation, unknownDensity } from './pictureHeader';

export interface ExifFacts {
  readonly orientation: Orientation;
  /** Place of the orientation within the bytes given. */
  readonly orientationPlace: BytePlace | null;
  readonly density: Density;
  /** True where ColorSpace is 1. */
  readonly isSrgb: boolean;
}

export const noExif: ExifFacts = {
  orientation: 1,
  orientationPlace: null,
  density: unknownDensity,
  isSrgb: false,
};

/* Tags of Exif 2.32 (CIPA DC-008), the same as in TIFF 6.0. */
const TAG = { orientation: 0x0112, xResolution: 0x011a, yResolution: 0x011b, unit: 0x0128 } as const;
const EXIF_FOLDER = 0x8769;
const COLOUR_SPACE = 0xa001;
const ENTRY_BYTES = 12;

/**
 * Reads the tags that matter here out of an EXIF block.
 *
 * @param block begins with the TIFF header; the word `Exif` some formats put before it is skipped
 * @returns upright, of unknown density, where the block says nothing sensible
 */
export function readExif(block: Uint8Array): ExifFacts {
  const reader = byteReader(block);
  const start = reader.word(0, 4) === 'Exif' ? 6 : 0;
  const order = reader.word(start, 2);
  if (order !== 'II' && order !== 'MM') return noExif;
  const littleEnd = order === 'II';
  const folder = folderReader(reader, start, littleEnd);
  const first = reader.u32(start + 4, littleEnd);
  if (first === null) return noExif;

  const stored = folder.short(first, TAG.orientation);
  const place = folder.place(first, TAG.orientation);
  const exifFolder = folder.long(first, EXIF_FOLDER);
  return {
    orientation: asOrientation(stored),
    orientationPlace:
      place === null ? null : { at: place, length: 2, holds: littleEnd ? 'valueLittleEnd' : 'valueBigEnd' },
    density: densityOf(
      folder.fraction(first, TAG.xResolution),
      folder.fraction(first, TAG.yResolution),
      folder.short(first, TAG.unit),
    ),
    isSrgb: exifFolder !== null && folder.short(exifFolder, COLOUR_SPACE) === 1,
  };
}

function asOrientation(value: number | null): Orientation {
  const known: readonly Orientation[] = [1, 2, 3, 4, 5, 6, 7, 8];
  return known.find((each) => each === value) ?? 1;
}

/** Unit 2, the default, is the inch and 3 the centimetre; in JFIF 2 is the centimetre. */
function densityOf(x: number | null, y: number | null, unit: number | null): Density {
  const perInch = unit === null || unit === 2 ? 1 : unit === 3 ? MM_PER_INCH / 10 : null;
  if (x === null || perInch === null || !(x > 0)) return unknownDensity;
  return { kind: 'declared', xPpi: x * perInch, yPpi: (y !== null && y > 0 ? y : x) * perInch, from: 'EXIF' };
}

function folderReader(reader: ByteReader, start: number, littleEnd: boolean) {
  /** Where the value of a tag, or the way to it, stands. */
  const place = (folderAt: number, tag: number): number | null => {
    const at = start + folderAt;
    const count = reader.u16(at, littleEnd) ?? 0;
    for (let entry = at + 2; entry < at + 2 + count * ENTRY_BYTES; entry += ENTRY_BYTES) {
      const found = reader.u16(entry, littleEnd);
      if (found === null) return null;
      if (found === tag) return entry + 8;
    }
    return null;
  };
  const via =
    (read: (at: number) => number | null) =>
    (folderAt: number, tag: number): number | null => {
      const at = place(folderAt, tag);
      return at === null ? null : read(at);
    };
  return {
    place,
    short: via((at) => reader.u16(at, littleEnd)),
    long: via((at) => reader.u32(at, littleEnd)),
    fraction: via((at) => {
      const away = reader.u32(at, littleEnd);
      if (away === null) return null;
      const above = reader.u32(start + away, littleEnd);
      const below = reader.u32(start + away + 4, littleEnd);
      return above === null || below === null || below === 0 ? null : above / below;
    }),
  };
}
