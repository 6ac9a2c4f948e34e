// @vitest-environment node
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it, test } from 'vitest';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import { hasDamagedScan } from '@/lib/picture/jpeg/damagedScan';
import { cases } from '@/tests/tools/cases';

const WIDTH = 413;
const HEIGHT = 307;
type Draw = (x: number, y: number) => readonly [number, number, number];

const grain = (x: number, y: number) => ((x * 7919 + y * 104_729 + ((x * y) % 97) * 31) % 61) - 30;
const photo: Draw = (x, y) => [
  128 + 90 * Math.sin(x / 40) + grain(x, y),
  128 + 90 * Math.cos(y / 35) + grain(y, x),
  (x * 255) / WIDTH,
];
const flat =
  (value: number): Draw =>
  () => [value, value, value];
/** A mark on white, as most of what is pressed. */
const badge: Draw = (x, y) => (Math.hypot(x - 200, y - 150) < 60 ? [200, 30, 60] : [255, 255, 255]);

function pixels(draw: Draw) {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 3);
  for (let at = 0; at < WIDTH * HEIGHT; at += 1) data.set(draw(at % WIDTH, Math.floor(at / WIDTH)), at * 3);
  return sharp(data, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } });
}

/** The same file with a part of its packed pixels zeroed. */
function zeroed(file: Uint8Array, from: number, length: number): Uint8Array {
  const copy = Uint8Array.from(file);
  copy.fill(0, from, from + length);
  return copy;
}
const lastScanAt = (file: Uint8Array) => Buffer.from(file).lastIndexOf(Buffer.from([0xff, 0xda]));

const ways = [
  ['plain', {}],
  ['with the usual tables', { optimizeCoding: false }],
  ['progressive', { progressive: true }],
  ['with full colour', { chromaSubsampling: '4:4:4' }],
  ['progressive with full colour', { progressive: true, chromaSubsampling: '4:4:4' }],
  ['with small tables and trellis', { mozjpeg: true }],
] as const;
const draws = [
  ['a photograph', photo],
  ['black', flat(0)],
  ['white', flat(255)],
  ['grey', flat(128)],
  ['a mark on white', badge],
] as const;

describe('a JPEG that is whole', () => {
  describe.each(ways)('%s', (_, way) => {
    // Flat parts are packed as long runs of zeros: they are no sign of damage.
    test.each(draws)('showing %s passes at any quality', async (__, draw) => {
      for (const quality of [1, 50, 92, 100]) {
        const file = await pixels(draw)
          .jpeg({ quality, ...way })
          .toBuffer();
        expect(inspectPicture(file).ok, `${quality}`).toBe(true);
      }
    });

    it('in grey passes', async () => {
      const file = await pixels(photo).greyscale().jpeg(way).toBuffer();
      expect(inspectPicture(file).ok).toBe(true);
    });
  });

  it('may hold a few more bytes at the end of its pixels, as some cameras write', async () => {
    const file = await pixels(photo).jpeg().toBuffer();
    const padded = Buffer.concat([file.subarray(0, -2), Buffer.alloc(16), file.subarray(-2)]);
    expect(inspectPicture(padded).ok).toBe(true);
  });
});

describe('a JPEG with a zeroed middle is noticed', () => {
  it('as is one zeroed up to its end', async () => {
    const file = await pixels(photo).jpeg({ quality: 85 }).toBuffer();
    const scan = lastScanAt(file) + 20;
    for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const from = scan + Math.floor((file.length - scan) * share);
      expect(hasDamagedScan(zeroed(file, from, file.length - 2 - from)), `${share}`).toBe(true);
    }
  });

  test.each(ways)('%s', async (_, way) => {
    const file = await pixels(photo)
      .jpeg({ quality: 85, ...way })
      .toBuffer();
    const scan = lastScanAt(file) + 20;
    const middle = scan + Math.floor((file.length - scan) / 3);
    const result = inspectPicture(zeroed(file, middle, Math.floor((file.length - scan) / 4)));
    expect(result).toEqual({ ok: false, problem: { kind: 'damaged', format: 'jpeg', part: 'its pixels' } });
  });

  it('wherever it lies, from 512 bytes on', async () => {
    const file = await pixels(photo).jpeg({ quality: 85 }).toBuffer();
    const scan = lastScanAt(file) + 20;
    fc.assert(
      fc.property(fc.nat(file.length - scan - 600), fc.integer({ min: 512, max: 20_000 }), (from, length) => {
        const most = Math.min(length, file.length - 4 - scan - from);
        expect(hasDamagedScan(zeroed(file, scan + from, most))).toBe(true);
      }),
      cases(60),
    );
  });

  it('as is one that lacks a piece', async () => {
    const file = await pixels(photo).jpeg({ quality: 85 }).toBuffer();
    const half = Math.floor(file.length / 2);
    expect(hasDamagedScan(Buffer.concat([file.subarray(0, half), file.subarray(half + 4096)]))).toBe(true);
  });
});

/**
 * Two grey blocks beside each other, each its own restart interval, with the packed pixels given. 00 is no change of
 * grey and 1010 the end of a block (ITU-T T.81, K.3.3.1 and K.3.3.2), filled up with ones: 0010 1011.
 */
function twoBlocks(scan: string): Uint8Array {
  const zeros = (count: number) => ' 00'.repeat(count);
  const dc = `ff c4 00 14 00 00 01${zeros(14)} 00`;
  const ac = `ff c4 00 19 10 00 02 01 03${zeros(12)} 01 02 03 00 04 11`;
  const frame = 'ff c0 00 0b 08 00 08 00 10 01 01 11 00';
  const head = `ff d8 ${frame} ${dc} ${ac} ff dd 00 04 00 01 ff da 00 08 01 01 00 00 3f 00`;
  return Uint8Array.from(Buffer.from(`${head} ${scan}`.replaceAll(' ', ''), 'hex'));
}

describe('packed pixels written by hand', () => {
  test.each([
    ['pass', '2b ff d0 2b ff d9'],
    ['pass where FF bytes lead the marker (B.1.1.2)', '2b ff ff d0 2b ff ff ff d9'],
    ['pass with 70 zeros behind the last unit', `2b ff d0 2b ${'00 '.repeat(70)} ff d9`],
    ['pass with 70 packed FF behind the last unit', `2b ff d0 2b ${'ff 00 '.repeat(70)} ff d9`],
    ['pass with 70 zeros behind each unit', `2b ${'00 '.repeat(70)} ff d0 2b ${'00 '.repeat(70)} ff d9`],
  ])('%s', (_, scan) => {
    expect(hasDamagedScan(twoBlocks(scan))).toBe(false);
  });

  test.each([
    ['the second unit is missing', '2b ff d9'],
    ['the second unit is missing behind its marker', '2b ff d0 ff d9'],
    ['a unit is followed by the wrong marker', '2b ff ff d1 2b ff d9'],
    ['far more units follow than there are places', `2b ff d0 ${'2b 2a '.repeat(40)} ff d9`],
    ['the last unit is cut off by zeros that begin within it', `2b ff d0 ${'00 '.repeat(100)} ff d9`],
  ])('are refused where %s', (_, scan) => {
    expect(hasDamagedScan(twoBlocks(scan))).toBe(true);
  });
});

describe('a PNG whose check sum is wrong', () => {
  const chunkAt = (file: Buffer, type: string) => file.indexOf(type, 0, 'latin1');

  test.each(['IHDR', 'IDAT', 'IEND'])('in %s is refused, as browsers refuse it', async (type) => {
    const file = await pixels(badge).png().toBuffer();
    const at = chunkAt(file, type);
    const end = at + 4 + file.readUInt32BE(at - 4);
    file.writeUInt8(file.readUInt8(end) ^ 1, end);
    expect(inspectPicture(file)).toEqual({
      ok: false,
      problem: { kind: 'damaged', format: 'png', part: type },
    });
  });

  it('is refused where a single bit of its pixels flipped', async () => {
    const file = await pixels(badge).png().toBuffer();
    const at = chunkAt(file, 'IDAT') + 40;
    file.writeUInt8(file.readUInt8(at) ^ 4, at);
    expect(inspectPicture(file)).toMatchObject({ ok: false, problem: { kind: 'damaged', part: 'IDAT' } });
  });

  test.each([1, 2, 4, 8])('passes where all are right, at a palette of %d bits', async (depth) => {
    const file = await pixels(badge)
      .png({ palette: true, colours: 2 ** depth })
      .toBuffer();
    expect(inspectPicture(file).ok).toBe(true);
  });
});
