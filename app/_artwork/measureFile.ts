import { open, stat } from 'node:fs/promises';
import { type InkReading, inkMeter } from '@/lib/ink/inkMeter';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import type { PictureHeader, PixelSize } from '@/lib/picture/pictureHeader';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import type { PictureSource } from '@/lib/picture/pictureSource';
import { refuseBytes } from '@/lib/picture/readHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';
import { vectorPixels } from '@/lib/picture/svg/vectorPixels';
import { failed, ok, type Result } from '@/shared/result';
import { sharpSource } from './sharpSource';

export interface MeasuredFile {
  readonly header: PictureHeader;
  /** Pixels measured, upright. */
  readonly pixels: PixelSize;
  readonly ink: InkReading;
}

const STEP_ROWS = 256;

/**
 * Reads a picture file from disk and measures its ink.
 *
 * @param printWidthMm width of the print, for drawings of lines
 * @throws where the file cannot be opened
 */
export async function measureFile(
  path: string,
  printWidthMm: number,
): Promise<Result<MeasuredFile, PictureProblem>> {
  const about = await stat(path);
  if (!about.isFile()) throw new Error('it is no file');
  const tooLarge = refuseBytes(about.size);
  if (tooLarge !== null) return failed(tooLarge);
  const bytes = await readAtMost(path, about.size);
  const header = inspectPicture(bytes);
  if (!header.ok) return header;
  const source = await unpack(bytes, header.value, printWidthMm);
  if (!source.ok) return source;
  const pixels =
    header.value.kind === 'raster'
      ? header.value.size
      : { width: source.value.width, height: source.value.height };
  return ok({ header: header.value, pixels, ink: inkOf(source.value) });
}

/** The file may have grown since it was asked for its size. */
async function readAtMost(path: string, length: number): Promise<Uint8Array> {
  const file = await open(path);
  try {
    const bytes = new Uint8Array(length);
    let filled = 0;
    while (filled < length) {
      const { bytesRead } = await file.read(bytes, filled, length - filled, filled);
      if (bytesRead === 0) break;
      filled += bytesRead;
    }
    return bytes.subarray(0, filled);
  } finally {
    await file.close();
  }
}

function unpack(
  bytes: Uint8Array,
  header: PictureHeader,
  printWidthMm: number,
): Promise<Result<PictureSource, PictureProblem>> {
  if (header.kind === 'raster') return sharpSource(bytes, header);
  const stored = vectorPixels(header.size, printWidthMm);
  const drawing = new TextEncoder().encode(svgAtSize(svgText(bytes), header, stored));
  return sharpSource(drawing, { format: 'svg', bitsPerChannel: 8, stored });
}

function inkOf(source: PictureSource): InkReading {
  const meter = inkMeter();
  for (let y = 0; y < source.height; y += STEP_ROWS) {
    const height = Math.min(STEP_ROWS, source.height - y);
    meter.add(source.read({ x: 0, y, width: source.width, height }));
  }
  return meter.read();
}
