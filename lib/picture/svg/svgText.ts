import { byteReader } from '@/lib/picture/byteReader';

const DECLARED = /^\s*<\?xml[^>]{0,200}encoding\s*=\s*["']([\w.-]{1,40})["']/;
/** Encodings older drawing programs still write, as browsers read them. */
const WESTERN: readonly string[] = ['iso-8859-1', 'windows-1252', 'us-ascii', 'latin1'];

/** @returns the text of an SVG file: by its mark, by what it declares, or UTF-8. */
export function svgText(bytes: Uint8Array): string {
  return new TextDecoder(encodingOf(bytes)).decode(bytes);
}

function encodingOf(bytes: Uint8Array): string {
  const beginning = byteReader(bytes).word(0, 300);
  if (beginning.startsWith('\xfe\xff')) return 'utf-16be';
  if (beginning.startsWith('\xff\xfe')) return 'utf-16le';
  const declared = DECLARED.exec(beginning)?.[1]?.toLowerCase();
  return declared !== undefined && WESTERN.includes(declared) ? 'windows-1252' : 'utf-8';
}
