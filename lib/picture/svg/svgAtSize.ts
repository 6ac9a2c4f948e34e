import type { PixelSize, VectorHeader } from '@/lib/picture/pictureHeader';
import { svgRoot } from './svgRoot';

/**
 * The same drawing with its size written out in pixels, so that every browser draws it at that size: without
 * width and height some draw nothing, and without a viewBox the drawing would be cut and not scaled. What stands
 * before the root goes: it may declare an encoding the text no longer has.
 *
 * @param size whole pixels, 1 and up
 */
export function svgAtSize(text: string, header: VectorHeader, size: PixelSize): string {
  const root = svgRoot(text);
  if (root === null) return text;
  const tag = text.slice(root.from, root.to).replace(/(\s)(?:width|height)\s*=\s*(?:"[^"]*"|'[^']*')/g, '$1');
  const viewBox = header.hasViewBox ? '' : ` viewBox="0 0 ${header.size.width} ${header.size.height}"`;
  const sized = tag.replace(
    /^<(?:[\w.-]+:)?svg/,
    `$& width="${size.width}" height="${size.height}"${viewBox}`,
  );
  return sized + text.slice(root.to);
}
