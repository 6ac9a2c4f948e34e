// @vitest-environment node
import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { sharpSource } from '@/app/_artwork/sharpSource';
import { readHeader } from '@/lib/picture/readHeader';
import { pngChunk, u32 } from '@/tests/fixtures/pictures/fileBytes';

const SIZE = 4;

/** A PNG of one colour of eight bits, with chunks before its pixels. */
function plain(colour: readonly number[], ...chunks: readonly number[][]): Uint8Array {
  const row = [0, ...Array.from({ length: SIZE }, () => colour).flat()];
  const rows = Uint8Array.from(Array.from({ length: SIZE }, () => row).flat());
  return Uint8Array.from([
    ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    ...pngChunk('IHDR', [...u32(SIZE), ...u32(SIZE), 8, 2, 0, 0, 0]),
    ...chunks.flat(),
    ...pngChunk('IDAT', [...deflateSync(rows)]),
    ...pngChunk('IEND', []),
  ]);
}

async function readOutside(bytes: Uint8Array): Promise<readonly number[]> {
  const header = readHeader(bytes);
  if (!header.ok || header.value.kind !== 'raster') throw new Error(JSON.stringify(header));
  const source = await sharpSource(bytes, header.value);
  if (!source.ok) throw new Error(JSON.stringify(source));
  return [...source.value.read({ x: 0, y: 0, width: 1, height: 1 }).rgba];
}

const gamma = (value: number) => pngChunk('gAMA', u32(value));
/** White of D65 and three primaries, times 100,000: PNG Specification, third edition, 11.3.2.1. */
const primaries = (...xy: readonly number[]) => pngChunk('cHRM', [31_270, 32_900, ...xy].flatMap(u32));
const p3 = primaries(68_000, 32_000, 26_500, 69_000, 15_000, 6_000);
const spoiled = (chunk: readonly number[]) => chunk.with(-1, (chunk.at(-1) ?? 0) ^ 1);

/*
 * By hand: plain light 128/255 = 0.50196 is 1.055 × 0.50196^(1/2.4) − 0.055 = 0.7366 in sRGB, 188 of 255; 128 at 1/1.8 is
 * 0.50196^1.8 = 0.2892 of light, 0.574, 146. The colours of primaries are what Chromium 156 reads, within one step.
 */
test.each<[string, Uint8Array, readonly number[]]>([
  ['plain light', plain([128, 128, 128], gamma(100_000)), [188, 188, 188]],
  ['a gamma of 1.8', plain([128, 128, 128], gamma(55_556)), [146, 146, 146]],
  ['plain light of Display P3', plain([200, 60, 60], gamma(100_000), p3), [244, 127, 130]],
  ['a gamma of 2.2 with those primaries', plain([200, 60, 60], gamma(45_455), p3), [219, 37, 49]],
  ['primaries without a gamma', plain([200, 60, 60], p3), [200, 60, 60]],
  ['sRGB above a gamma', plain([128, 128, 128], gamma(100_000), pngChunk('sRGB', [0])), [128, 128, 128]],
  ['a gamma of nothing', plain([128, 128, 128], gamma(0)), [128, 128, 128]],
  ['a gamma whose check sum is wrong', plain([128, 128, 128], spoiled(gamma(100_000))), [128, 128, 128]],
])('outside the browser a PNG is read as in it: %s', async (_, bytes, expected) => {
  const seen = await readOutside(bytes);
  for (const [channel, value] of expected.entries()) {
    expect(Math.abs((seen[channel] ?? 0) - value), `${seen}`).toBeLessThanOrEqual(1);
  }
});
