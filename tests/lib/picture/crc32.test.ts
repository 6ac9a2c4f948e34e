import { crc32 as nodeCrc32 } from 'node:zlib';
import { expect, it } from 'vitest';
import { crc32 } from '@/lib/picture/crc32';

const bytes = new TextEncoder().encode('123456789');

it('is the published check value', () => {
  // ISO 3309 and ITU-T V.42, as catalogues of such sums give it for these nine figures.
  expect(crc32(bytes)).toBe(0xcbf43926);
  expect(crc32(new Uint8Array())).toBe(0);
});

it('is the same worked out piece by piece', () => {
  const long = Uint8Array.from({ length: 1000 }, (_, at) => (at * at) & 255);
  expect(crc32(long)).toBe(nodeCrc32(long));
  for (const cut of [0, 1, 500, 1000]) {
    expect(crc32(long.subarray(cut), crc32(long.subarray(0, cut)))).toBe(nodeCrc32(long));
  }
});
