import type { NotACopy } from './copy';

type Look = Extract<NotACopy, { readonly code: 'notOurs' }>['looksLike'];

/** How each begins; the first bytes of PNG, JPEG, GIF, WebP, BMP and TIFF, of PDF, and of text that is JSON or SVG. */
const beginnings: readonly (readonly [RegExp, Look])[] = [
  [/^\x89PNG\r\n/, 'picture'],
  [/^\xff\xd8\xff/, 'picture'],
  [/^GIF8[79]a/, 'picture'],
  [/^RIFF[\s\S]{4}WEBP/, 'picture'],
  [/^BM[\s\S]{4}/, 'picture'],
  [/^(II\*|MM[\s\S]\*)/, 'picture'],
  [/^\s*(<\?xml[\s\S]*?>\s*)?(<!--[\s\S]*?-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/, 'picture'],
  [/^[\s\S]{4}ftyp(avif|heic|heix|mif1)/, 'picture'],
  [/^%PDF-/, 'pdf'],
];

/** @param start the first bytes of a file, each as one character */
export const looksLike = (start: string, isJson: boolean): Look => {
  if (start.length === 0) return 'empty';
  if (isJson) return 'otherJson';
  return beginnings.find(([beginning]) => beginning.test(start))?.[1] ?? 'other';
};
