import { isUsualLight, pngLight } from '@/lib/picture/profile/pngLight';
import { failed, ok, type Result } from '@/shared/result';
import { MM_PER_INCH } from '@/shared/units';
import { byteReader } from './byteReader';
import {
  type ColourTag,
  type Density,
  type RasterHeader,
  unknownDensity,
  uprightDensity,
  uprightSize,
} from './pictureHeader';
import type { PictureProblem } from './pictureProblem';
import { pngStart } from './pngStart';
import { pngFacts } from './pngSums';
import { readExif } from './readExif';

/** Depths each colour type may have: PNG Specification, third edition (W3C 2025), table 11.1. */
const DEPTHS: Readonly<Record<number, readonly number[]>> = {
  0: [1, 2, 4, 8, 16],
  2: [8, 16],
  3: [1, 2, 4, 8],
  4: [8, 16],
  6: [8, 16],
};
const BITS = [1, 2, 4, 8, 16] as const;
const HAS_ALPHA: readonly number[] = [4, 6];

/** @returns what the chunks before the pixels of a PNG tell. */
export function pngHeader(bytes: Uint8Array): Result<RasterHeader, PictureProblem> {
  const { width, height, depth, colourType } = pngStart(bytes);
  if (width === null || height === null || depth === null || colourType === null) {
    return failed({ kind: 'cutShort', format: 'png', bytes: bytes.length });
  }
  const bits = BITS.find((known) => known === depth);
  const isWellFormed = byteReader(bytes).word(12, 4) === 'IHDR' && width > 0 && height > 0;
  if (!isWellFormed || bits === undefined || !DEPTHS[colourType]?.includes(depth)) {
    return failed({ kind: 'damaged', format: 'png', part: 'IHDR' });
  }
  const { place, data: dataOf } = pngFacts(bytes);
  const exifChunk = place('eXIf');
  const exif = readExif(dataOf('eXIf') ?? new Uint8Array());
  const physical = physicalDensity(dataOf('pHYs'));
  const stored = { width, height };
  return ok({
    kind: 'raster',
    format: 'png',
    stored,
    size: uprightSize(stored, exif.orientation),
    orientation: exif.orientation,
    orientationPlace:
      exifChunk === null || exif.orientationPlace === null
        ? null
        : { at: exifChunk.at, length: exifChunk.length + 12, holds: 'chunk' },
    density: uprightDensity(physical.kind === 'declared' ? physical : exif.density, exif.orientation),
    bitsPerChannel: bits,
    mayBeClear: HAS_ALPHA.includes(colourType) || place('tRNS') !== null,
    colourTag: colourTag(dataOf),
    isAnimated: place('acTL') !== null,
  });
}

/** pHYs: pixels a metre where its unit is 1; unit 0 tells only the shape of a pixel. */
function physicalDensity(data: Uint8Array | null): Density {
  const reader = byteReader(data ?? new Uint8Array());
  const x = reader.u32(0);
  const y = reader.u32(4);
  if (x === null || y === null || x === 0 || y === 0 || reader.u8(8) !== 1) return unknownDensity;
  const perInch = MM_PER_INCH / 1000;
  return { kind: 'declared', xPpi: x * perInch, yPpi: y * perInch, from: 'pHYs' };
}

/** A gamma or primaries of its own count as a profile: decoders follow them in the same way. */
function colourTag(dataOf: (type: string) => Uint8Array | null): ColourTag {
  if (dataOf('iCCP') !== null || dataOf('cICP') !== null) return 'profile';
  if (dataOf('sRGB') !== null) return 'sRGB';
  const light = pngLight(dataOf);
  return light === null || isUsualLight(light) ? 'untagged' : 'profile';
}
