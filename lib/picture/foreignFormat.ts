import { byteReader } from './byteReader';

/** Formats makers are sent that are not read here, by how their files begin. */
const SIGNATURES: readonly (readonly [string, number, string])[] = [
  ['PDF', 0, '%PDF'],
  ['PostScript', 0, '%!PS'],
  ['PostScript', 0, '\xc5\xd0\xd3\xc6'],
  ['Photoshop', 0, '8BPS'],
  ['TIFF', 0, 'II*\0'],
  ['TIFF', 0, 'MM\0*'],
  ['BMP', 0, 'BM'],
  ['icon', 0, '\0\0\x01\0'],
  ['JPEG XL', 0, '\xff\x0a'],
  ['JPEG XL', 4, 'JXL '],
  ['JPEG 2000', 4, 'jP  '],
  ['AVIF', 4, 'ftypavif'],
  ['AVIF', 4, 'ftypavis'],
  ['HEIC', 4, 'ftyphei'],
  ['HEIC', 4, 'ftyphev'],
  ['HEIC', 4, 'ftypmif1'],
  ['film', 4, 'ftyp'],
  ['GIMP', 0, 'gimp xcf'],
  ['zip', 0, 'PK\x03\x04'],
  ['gzip', 0, '\x1f\x8b'],
  ['film', 0, '\x1aE\xdf\xa3'],
];
const WEB_PAGE = /^\s*(?:<!--[\s\S]*?-->\s*)*<(?:!doctype\s+html|html|head|body)[\s>]/i;

/** @returns the name of a known format that is not read here, or null. */
export function foreignFormat(bytes: Uint8Array): string | null {
  const { word } = byteReader(bytes);
  const found = SIGNATURES.find(([, at, begins]) => word(at, begins.length) === begins);
  if (found !== undefined) return found[0];
  return WEB_PAGE.test(word(0, 1024)) ? 'web page' : null;
}
