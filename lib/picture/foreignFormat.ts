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
  ['GIMP', 0, 'gimp xcf'],
  ['zip', 0, 'PK\x03\x04'],
  ['gzip', 0, '\x1f\x8b'],
  ['film', 0, '\x1aE\xdf\xa3'],
];
const WEB_PAGE = /^\s*(?:<!--[\s\S]*?-->\s*)*<(?:!doctype\s+html|html|head|body)[\s>]/i;

/** Brands of pictures in the boxes that films come in: ISO/IEC 23008-12, 10.2 and annex B; those of AV1 besides. */
const AV1: readonly string[] = ['avif', 'avis'];
const STILL: readonly string[] = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'mif2', 'msf1'];
/** Brands told beside the first; phones write four or five. */
const MOST_BRANDS = 64;

/** @returns the name of a known format that is not read here, or null. */
export function foreignFormat(bytes: Uint8Array): string | null {
  const { word } = byteReader(bytes);
  if (word(4, 4) === 'ftyp') return boxedFormat(bytes);
  const found = SIGNATURES.find(([, at, begins]) => word(at, begins.length) === begins);
  if (found !== undefined) return found[0];
  return WEB_PAGE.test(word(0, 1024)) ? 'web page' : null;
}

/** By every brand told, for the first may be the one that pictures of both kinds share. */
function boxedFormat(bytes: Uint8Array): string {
  const { word, u32 } = byteReader(bytes);
  const count = Math.min(MOST_BRANDS, Math.floor(((u32(0) ?? 0) - 16) / 4));
  const others = Array.from({ length: Math.max(0, count) }, (_, index) => word(16 + index * 4, 4));
  const brands = [word(8, 4), ...others];
  const isOneOf = (known: readonly string[]) => brands.some((brand) => known.includes(brand));
  if (isOneOf(AV1)) return 'AVIF';
  return isOneOf(STILL) ? 'HEIC photo' : 'film';
}
