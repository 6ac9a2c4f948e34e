// @vitest-environment node
import sharp from 'sharp';
import { expect, it, test } from 'vitest';
import { inflate } from '@/app/_artwork/inflate';
import { isReadDeep, readDeepPng } from '@/app/_artwork/readDeepPng';
import { readHeader } from '@/lib/picture/readHeader';
import { pngChunk, pngFile, u16 } from '@/tests/fixtures/pictures/fileBytes';

const WIDTH = 37;
const HEIGHT = 23;
/** Numbers that use both bytes, smooth in one half and wild in the other, so that every filter is chosen. */
const numbers = (channels: number) =>
  Uint16Array.from({ length: WIDTH * HEIGHT * channels }, (_, at) =>
    at % (WIDTH * channels) < 50 ? (at * 97) % 65_536 : Math.imul(at, 2_654_435_761) >>> 16,
  );
const png = (channels: 1 | 2 | 3 | 4, progressive: boolean) =>
  sharp(numbers(channels), { raw: { width: WIDTH, height: HEIGHT, channels, depth: 'ushort' } as never })
    .toColourspace(channels < 3 ? 'grey16' : 'rgb16')
    .png({ progressive, adaptiveFiltering: true })
    .toBuffer();

// etemesi254/zune-image issue 52: 16-bit RGB and grey at full size.
test.each([
  [1, false],
  [2, false],
  [3, false],
  [4, false],
  [1, true],
  [3, true],
  [4, true],
] as const)(
  '%d channels of 16 bits, interlaced %s, are read number for number',
  async (channels, interlaced) => {
    const bytes = await png(channels, interlaced);
    const header = readHeader(bytes);
    expect(header).toMatchObject({
      ok: true,
      value: { bitsPerChannel: 16, size: { width: WIDTH, height: HEIGHT } },
    });
    if (header.ok && header.value.kind === 'raster') expect(isReadDeep(header.value)).toBe(true);
    const given = numbers(channels);
    const expected = Uint16Array.from({ length: WIDTH * HEIGHT * 4 }, (_, at) => {
      const from = Math.floor(at / 4) * channels;
      const part = at % 4;
      if (part === 3) return channels % 2 === 0 ? (given[from + channels - 1] ?? 0) : 65_535;
      return given[from + (channels >= 3 ? part : 0)] ?? 0;
    });
    const grid = await readDeepPng(bytes);
    expect(grid?.rgba).toEqual(expected);
  },
);

it('makes the one colour clear that a picture names', async () => {
  const bytes = await png(3, false);
  const first = numbers(3).slice(0, 3);
  const chunk = pngChunk('tRNS', [...first].flatMap(u16));
  const named = Uint8Array.from([...bytes.subarray(0, 33), ...chunk, ...bytes.subarray(33)]);
  const grid = await readDeepPng(named);
  expect([grid?.rgba[3], grid?.rgba[7]]).toEqual([0, 65_535]);
});

it('gives nothing for packed data that are broken or do not fill the picture', async () => {
  const bytes = Uint8Array.from(await png(3, false));
  expect(await readDeepPng(pngFile(9, 9, { depth: 16 }))).toBeNull();
  bytes.fill(7, 60, 90);
  expect(await readDeepPng(bytes)).toBeNull();
});

it('stops unpacking a small file that grows without end', async () => {
  const bomb = await new Response(
    new Blob([new Uint8Array(5_000_000)]).stream().pipeThrough(new CompressionStream('deflate')),
  ).arrayBuffer();
  expect(await inflate([new Uint8Array(bomb)], 1_000)).toBeNull();
  expect((await inflate([new Uint8Array(bomb)], 5_000_000))?.length).toBe(5_000_000);
});
