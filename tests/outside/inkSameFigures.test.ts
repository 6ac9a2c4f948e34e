// @vitest-environment node
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import { measureFile } from '@/app/_artwork/measureFile';
import { readDeepPng } from '@/app/_artwork/readDeepPng';
import { measureInk } from '@/lib/ink/measureInk';
import { gridOf, type Pixel } from '@/tests/fixtures/pictures/gridOf';

/* One picture, saved in every way by an imaging library, and its files read back. */
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ink-'));
});
afterAll(() => rm(folder, { recursive: true }));

const colours: readonly Pixel[] = [
  [255, 255, 255, 255],
  [0, 174, 239, 255],
  [236, 0, 140, 255],
  [255, 242, 0, 255],
  [35, 31, 32, 255],
  [90, 140, 60, 128],
  [200, 30, 30, 0],
];
/** Few colours, so that a palette holds it; soft and clear parts as well. */
const picture = gridOf(
  140,
  90,
  (x, y) => colours[(Math.floor(x / 7) + Math.floor(y / 5)) % 7] ?? [0, 0, 0, 0],
);
const loaded = () => sharp(picture.rgba, { raw: { width: 140, height: 90, channels: 4 } });
const deep = () =>
  sharp(
    Uint16Array.from(picture.rgba, (number) => number * 257),
    {
      raw: { width: 140, height: 90, channels: 4, depth: 'ushort' } as never,
    },
  )
    .toColourspace('rgb16')
    .png();

async function inkOf(name: string, bytes: Uint8Array) {
  const path = join(folder, name);
  await writeFile(path, bytes);
  const measured = await measureFile(path, 200);
  if (!measured.ok) throw new Error(JSON.stringify(measured.problem));
  return measured.value;
}

describe('the same picture has the same ink', () => {
  const truth = measureInk(picture);
  test.each<[string, () => Sharp]>([
    ['PNG of 8 bits', () => loaded().png()],
    ['interlaced PNG', () => loaded().png({ progressive: true })],
    ['PNG of 16 bits', deep],
    ['palette PNG', () => loaded().png({ palette: true, colours: 8, dither: 0 })],
    ['lossless WebP', () => loaded().webp({ lossless: true, exact: true })],
    [
      'lossless WebP that forgets what clear pixels hide',
      () => loaded().webp({ lossless: true, exact: false }),
    ],
  ])('as %s', async (name, save) => {
    const { ink, pixels } = await inkOf(name, await save().toBuffer());
    expect(pixels).toEqual({ width: 140, height: 90 });
    for (const channel of ['cyan', 'magenta', 'yellow', 'black'] as const) {
      expect(Math.abs(ink.coverage[channel] - truth.coverage[channel]), channel).toBeLessThan(1e-5);
    }
    expect(ink.heavyShare).toBe(truth.heavyShare);
  });

  // meta-pytorch/torchcodec issue 1731: palettes of every depth, clear entries (tRNS) among them.
  test.each([
    [1, 2],
    [2, 4],
    [4, 7],
    [8, 40],
  ])('as palette PNG of %d bits with clear entries, %d colours', async (bits, count) => {
    const few = gridOf(140, 90, (x, y) => {
      const at = (Math.floor(x / 7) + Math.floor(y / 5)) % count;
      return at === 0 ? [0, 0, 0, 0] : [at * 6, 255 - at * 6, (at * 90) % 256, 255];
    });
    const bytes = await sharp(few.rgba, { raw: { width: 140, height: 90, channels: 4 } })
      .png({ palette: true, colours: 2 ** bits, dither: 0, effort: 10 })
      .toBuffer();
    // The header's depth and kind of colour (3 is a palette), and the chunk of clear entries.
    expect([bytes[24], bytes[25], bytes.includes('tRNS')]).toEqual([bits, 3, true]);
    const { ink } = await inkOf(`palette-${bits}.png`, bytes);
    const own = measureInk(few);
    for (const channel of ['cyan', 'magenta', 'yellow', 'black'] as const) {
      expect(Math.abs(ink.coverage[channel] - own.coverage[channel]), channel).toBeLessThan(1e-5);
    }
  });

  it('as PNG of 16 bits unpacked without the library', async () => {
    const grid = await readDeepPng(await deep().toBuffer());
    if (grid === null) throw new Error('a good file');
    expect(measureInk(grid).coverage.magenta).toBeCloseTo(truth.coverage.magenta, 5);
  });

  it('as JPEG within what packing loses', async () => {
    const flat = await loaded()
      .flatten({ background: '#fff' })
      .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
      .toBuffer();
    const { ink } = await inkOf('a.jpg', flat);
    for (const channel of ['cyan', 'magenta', 'yellow', 'black'] as const) {
      expect(Math.abs(ink.coverage[channel] - truth.coverage[channel]), channel).toBeLessThan(0.01);
    }
  });
});

// meta-pytorch/torchcodec issue 1731: palettes of 1, 2, 4 and 8 bits with clear colours.
test.each([2, 4, 16, 200])('a palette PNG of %d colours has the ink of its pixels', async (colours) => {
  const many = gridOf(60, 40, (x, y) => {
    const place = (x + y * 60) % colours;
    return place === 0 ? [0, 0, 0, 0] : [(place * 37) % 256, (place * 91) % 256, (place * 13) % 256, 255];
  });
  const bytes = await sharp(many.rgba, { raw: { width: 60, height: 40, channels: 4 } })
    .png({ palette: true, colours, dither: 0, effort: 1 })
    .toBuffer();
  // The library may shift colours when it makes a palette: what it wrote is the truth here.
  const written = await sharp(bytes).ensureAlpha().raw().toBuffer();
  const { ink, header } = await inkOf(`palette${colours}.png`, bytes);
  expect(header).toMatchObject({ mayBeClear: true });
  expect(ink).toEqual(measureInk({ width: 60, height: 40, rgba: new Uint8Array(written) }));
});

// dfa1234/ngx-image-compress issue 64: all eight ways a camera can be held.
test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  'a picture turned by orientation %d has its upright size',
  async (orientation) => {
    for (const format of ['jpeg', 'webp', 'png'] as const) {
      const bytes = await loaded()
        .flatten({ background: '#fff' })
        .toFormat(format)
        .withMetadata({ orientation })
        .toBuffer();
      const { pixels, header } = await inkOf(`turned${orientation}.${format}`, bytes);
      expect(header, format).toMatchObject({ orientation });
      expect(pixels).toEqual(orientation >= 5 ? { width: 90, height: 140 } : { width: 140, height: 90 });
    }
  },
);

test('of moving pictures the first frame is used', async () => {
  const frames = [colours[1], colours[4]].map((colour) => gridOf(20, 20, () => colour ?? [0, 0, 0, 0]).rgba);
  const tall = Uint8Array.from(frames.flatMap((frame) => [...frame]));
  const moving = sharp(tall, { raw: { width: 20, height: 40, channels: 4, pageHeight: 20 } as never });
  const first = measureInk(gridOf(20, 20, () => colours[1] ?? [0, 0, 0, 0]));
  for (const [name, file] of [
    ['a.gif', moving.clone().gif()],
    ['a.webp', moving.clone().webp({ lossless: true })],
  ] as const) {
    const { ink, header, pixels } = await inkOf(name, await file.toBuffer());
    expect(header, name).toMatchObject({ isAnimated: true });
    expect(pixels).toEqual({ width: 20, height: 20 });
    expect(ink.coverage.cyan, name).toBeCloseTo(first.coverage.cyan, 2);
  }
});

test('a drawing is measured at its final size', async () => {
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><path fill="#0ff" d="M0 0h2v2H0z"/></svg>';
  const { ink, pixels } = await inkOf('a.svg', new TextEncoder().encode(svg));
  // 200 mm at 300 px an inch.
  expect(pixels).toEqual({ width: 2362, height: 1181 });
  expect(ink.coverage.cyan).toBeCloseTo(0.5, 6);
});
