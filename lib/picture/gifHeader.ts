import { failed, ok, type Result } from '@/shared/result';
import { byteReader } from './byteReader';
import { type RasterHeader, unknownDensity } from './pictureHeader';
import type { PictureProblem } from './pictureProblem';

/* GIF89a Specification, Appendix A. */
const HEADER_BYTES = 13;
const BLOCK = { extension: 0x21, image: 0x2c, trailer: 0x3b } as const;

/** @returns what the blocks of a GIF tell; of several frames the first is used. */
export function gifHeader(bytes: Uint8Array): Result<RasterHeader, PictureProblem> {
  const reader = byteReader(bytes);
  const width = reader.u16(6, true);
  const height = reader.u16(8, true);
  if (width === null || height === null || bytes.length < HEADER_BYTES) {
    return failed({ kind: 'cutShort', format: 'gif', bytes: bytes.length });
  }
  if (width === 0 || height === 0) return failed({ kind: 'damaged', format: 'gif', part: 'screen' });
  const stored = { width, height };
  return ok({
    kind: 'raster',
    format: 'gif',
    stored,
    size: stored,
    orientation: 1,
    orientationPlace: null,
    density: unknownDensity,
    bitsPerChannel: 8,
    // A frame may also be smaller than the screen it stands on.
    mayBeClear: true,
    colourTag: 'untagged',
    isAnimated: gifFrames(bytes).frames > 1,
  });
}

/** Walks over the blocks of a GIF without unpacking any; `isWhole` where the trailer was reached. */
export function gifFrames(bytes: Uint8Array): {
  readonly frames: number;
  readonly isWhole: boolean;
} {
  const reader = byteReader(bytes);
  const tableBytes = (flags: number) => ((flags & 0x80) === 0 ? 0 : 3 * 2 ** ((flags & 7) + 1));
  let at = HEADER_BYTES + tableBytes(reader.u8(10) ?? 0);
  let frames = 0;
  for (;;) {
    const block = reader.u8(at);
    if (block === BLOCK.extension) {
      at = afterParts(at + 2);
    } else if (block === BLOCK.image) {
      frames += 1;
      at = afterParts(at + 10 + tableBytes(reader.u8(at + 9) ?? 0) + 1);
    } else {
      return { frames, isWhole: block === BLOCK.trailer && frames > 0 };
    }
  }

  function afterParts(first: number): number {
    let part = first;
    for (let length = reader.u8(part); length !== null && length > 0; length = reader.u8(part)) {
      part += length + 1;
    }
    return part + 1;
  }
}
