import { hasDamagedScan } from '@/lib/picture/jpeg/damagedScan';
import { failed, type Result } from '@/shared/result';
import { isCutShort } from './isCutShort';
import type { PictureFormat, PictureHeader } from './pictureHeader';
import type { PictureProblem } from './pictureProblem';
import { damagedChunk } from './pngSums';
import { readHeader } from './readHeader';

/**
 * Everything that can be said against a whole file before it is decoded: its header, its bounds, whether it ends before
 * its picture does, and whether what it holds fits together. Decoders differ in what they pass over.
 */
export function inspectPicture(bytes: Uint8Array): Result<PictureHeader, PictureProblem> {
  const header = readHeader(bytes);
  if (!header.ok) return header;
  const { format } = header.value;
  if (isCutShort(bytes, format)) return failed({ kind: 'cutShort', format, bytes: bytes.length });
  const part = damagedPart(bytes, format);
  return part === null ? header : failed({ kind: 'damaged', format, part });
}

/** WebP and GIF have nothing to be checked by but their decoder. */
function damagedPart(bytes: Uint8Array, format: PictureFormat): string | null {
  if (format === 'png') return damagedChunk(bytes);
  return format === 'jpeg' && hasDamagedScan(bytes) ? 'its pixels' : null;
}
