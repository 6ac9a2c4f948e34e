import { svgHeader } from '@/lib/picture/svg/svgHeader';
import { svgRoot } from '@/lib/picture/svg/svgRoot';
import { svgText } from '@/lib/picture/svg/svgText';
import { failed, type Result } from '@/shared/result';
import { byteReader } from './byteReader';
import { foreignFormat } from './foreignFormat';
import { gifHeader } from './gifHeader';
import { jpegHeader } from './jpegHeader';
import type { PictureFormat, PictureHeader } from './pictureHeader';
import { pictureLimits } from './pictureLimits';
import type { PictureProblem } from './pictureProblem';
import { pngHeader } from './pngHeader';
import { webpHeader } from './webpHeader';

/** Text before the root of an SVG: editors write long comments there. */
const SVG_SEARCH_BYTES = 65_536;

/**
 * Reads what a picture file says of itself, without decoding it and without trusting its name: format, size,
 * how it is turned, density, animation. Bounds on pixels are judged here, before any memory is taken.
 *
 * @param bytes the file, or so much of its beginning that the header is inside
 */
export function readHeader(bytes: Uint8Array): Result<PictureHeader, PictureProblem> {
  if (bytes.length === 0) return failed({ kind: 'empty' });
  const format = formatOf(bytes);
  if (format === null) return failed(unknownFormat(bytes));
  const header = headerOf(format, bytes);
  if (!header.ok || header.value.kind === 'vector') return header;
  const problem = outOfBounds(header.value.size);
  return problem === null ? header : failed(problem);
}

/** @returns a reason where a file is too large to be read at all; judged before reading it. */
export const refuseBytes = (bytes: number): PictureProblem | null =>
  bytes > pictureLimits.mostBytes
    ? { kind: 'tooManyBytes', bytes, most: pictureLimits.mostBytes }
    : bytes === 0
      ? { kind: 'empty' }
      : null;

/** The format by its signature. */
function formatOf(bytes: Uint8Array): PictureFormat | null {
  const { word } = byteReader(bytes);
  if (word(0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (word(0, 3) === '\xff\xd8\xff') return 'jpeg';
  if (word(0, 4) === 'RIFF' && word(8, 4) === 'WEBP') return 'webp';
  if (word(0, 6) === 'GIF87a' || word(0, 6) === 'GIF89a') return 'gif';
  return svgRoot(svgText(bytes.subarray(0, SVG_SEARCH_BYTES))) === null ? null : 'svg';
}

function headerOf(format: PictureFormat, bytes: Uint8Array): Result<PictureHeader, PictureProblem> {
  switch (format) {
    case 'png':
      return pngHeader(bytes);
    case 'jpeg':
      return jpegHeader(bytes);
    case 'webp':
      return webpHeader(bytes);
    case 'gif':
      return gifHeader(bytes);
    case 'svg':
      return svgHeader(svgText(bytes), bytes.length);
    default:
      return format satisfies never;
  }
}

function unknownFormat(bytes: Uint8Array): PictureProblem {
  const format = foreignFormat(bytes);
  if (format !== null) return { kind: 'otherFormat', format };
  const begins = [...bytes.subarray(0, 8)].map((byte) => byte.toString(16).padStart(2, '0')).join(' ');
  return { kind: 'notAPicture', bytes: bytes.length, begins };
}

function outOfBounds({ width, height }: { width: number; height: number }): PictureProblem | null {
  const { mostPixels, mostSidePx, leastSidePx } = pictureLimits;
  if (Math.max(width, height) > mostSidePx) return { kind: 'tooLong', width, height, mostSidePx };
  if (width * height > mostPixels) return { kind: 'tooManyPixels', width, height, most: mostPixels };
  if (Math.min(width, height) < leastSidePx) return { kind: 'tooSmall', width, height, leastSidePx };
  return null;
}
