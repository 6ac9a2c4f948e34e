import { expect, it } from 'vitest';
import { MOST_CSV_BYTES, readCsvBytes } from '@/lib/names/readCsvBytes';

const TEXT = 'Name,Size\r\nNguyễn Ánh 李,L\r\n';
const bytes = (...parts: (readonly number[])[]) => Uint8Array.from(parts.flat());
const utf8 = [...new TextEncoder().encode(TEXT)];
const littleEnd = [...new Uint8Array(Buffer.from(TEXT, 'utf16le'))];
const bigEnd = littleEnd.map((_, at) => littleEnd[at ^ 1] ?? 0);

/* Byte order marks by the Unicode Standard, table 23-5. */
it.each([
  ['UTF-8 without a mark', bytes(utf8)],
  ['UTF-8 with its mark', bytes([0xef, 0xbb, 0xbf], utf8)],
  ['UTF-16, little end first', bytes([0xff, 0xfe], littleEnd)],
  ['UTF-16, big end first', bytes([0xfe, 0xff], bigEnd)],
])('reads %s', (_, file) => expect(readCsvBytes(file)).toEqual({ state: 'text', text: TEXT }));

it.each([
  ['Latin-1, in which “é” is one byte', bytes([0x4a, 0x6f, 0x73, 0xe9, 0x2c, 0x4c]), 'encoding'],
  ['UTF-16 without its mark', bytes(littleEnd), 'encoding'],
  ['UTF-32', bytes([0xff, 0xfe, 0, 0, 0x41, 0, 0, 0]), 'encoding'],
  ['UTF-16 cut in the middle of a sign', bytes([0xff, 0xfe, 0x41]), 'encoding'],
  ['a workbook', bytes([0x50, 0x4b, 0x03, 0x04, 0x14]), 'workbook'],
  ['an empty file', bytes([]), 'empty'],
  ['a file of nothing but its mark', bytes([0xef, 0xbb, 0xbf]), 'empty'],
  ['a file too large for a list of names', new Uint8Array(MOST_CSV_BYTES + 1).fill(0x41), 'tooLarge'],
])('tells %s and guesses nothing', (_, file, why) =>
  expect(readCsvBytes(file)).toEqual({ state: 'refused', why }),
);
