import { expect, test } from 'vitest';
import { foreignFormat } from '@/lib/picture/foreignFormat';
import { textBytes, u32 } from '@/tests/fixtures/pictures/fileBytes';

/** The first box of a file: ISO/IEC 14496-12, 4.3. */
const boxed = (first: string, ...others: readonly string[]) =>
  Uint8Array.from([
    ...u32(16 + others.length * 4),
    ...textBytes(`ftyp${first}`),
    ...u32(0),
    ...textBytes(others.join('')),
  ]);

test.each([
  ['a still of a phone', boxed('heic', 'mif1', 'heic'), 'HEIC photo'],
  ['a still told by the shared brand', boxed('mif1', 'heic', 'hevc'), 'HEIC photo'],
  ['a row of stills', boxed('msf1', 'hevc'), 'HEIC photo'],
  ['one whose first brand is of a maker', boxed('MiHE', 'mif1', 'heic'), 'HEIC photo'],
  ['AV1 told by the shared brand', boxed('mif1', 'avif'), 'AVIF'],
  ['AV1', boxed('avif', 'mif1'), 'AVIF'],
  ['a film', boxed('isom', 'iso2', 'avc1', 'mp41'), 'film'],
  ['a film of a phone', boxed('qt  ', 'qt  '), 'film'],
  ['a box cut short', boxed('mp42').subarray(0, 12), 'film'],
])('%s is named by all its brands', (_, bytes, name) => {
  expect(foreignFormat(bytes)).toBe(name);
});
