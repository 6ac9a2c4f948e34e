import { failed, type Result } from '@/shared/result';
import { isCutShort } from './isCutShort';
import type { PictureHeader } from './pictureHeader';
import type { PictureProblem } from './pictureProblem';
import { readHeader } from './readHeader';

/**
 * Everything that can be said against a whole file before it is decoded: its header, its bounds, and whether
 * it ends before its picture does.
 */
export function inspectPicture(bytes: Uint8Array): Result<PictureHeader, PictureProblem> {
  const header = readHeader(bytes);
  if (!header.ok) return header;
  const { format } = header.value;
  return isCutShort(bytes, format) ? failed({ kind: 'cutShort', format, bytes: bytes.length }) : header;
}
