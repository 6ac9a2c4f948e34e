import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { profileOfFile } from '@/app/_artwork/profileOfFile';
import type { PieceToPrint } from '@/lib/exports/sheetsToPrint';
import { pngChunks } from '@/lib/picture/pngChunks';
import { readHeader } from '@/lib/picture/readHeader';
import { pngChunk } from '@/tests/fixtures/pictures/fileBytes';
import { readSheets, type Six, written } from '@/tests/fixtures/readSheets';

/* Pixels and colours of embedded pictures, by a reader and a decoder (sharp) that share nothing with the writer. */

const piece: PieceToPrint = {
  xMm: 10,
  yMm: 20,
  widthMm: 60,
  heightMm: 40,
  turned: false,
  picture: 'art',
  flipped: false,
  fit: 'stretch',
  shown: null,
};
const job = { title: 'x', widthMm: 210, sheets: [{ count: 1, heightMm: 297, pieces: [piece] }] };

async function embedded(file: Uint8Array) {
  const result = await written(job, new Map([['art', file]]));
  const { pictures } = await readSheets(result.bytes);
  const [picture] = pictures;
  if (picture === undefined) throw new Error('no picture lies on the page');
  return { ...result, picture, text: Buffer.from(result.bytes).toString('latin1') };
}

const WIDTH = 61;
const HEIGHT = 41;

/** Every row and column differs, in every channel. */
const pixels = (channels: 1 | 2 | 3 | 4) =>
  Uint8Array.from({ length: WIDTH * HEIGHT * channels }, (_, at) => {
    const [x, y] = [Math.floor(at / channels) % WIDTH, Math.floor(at / channels / WIDTH)];
    return (x * 4 + y * (5 + (at % channels)) + (at % channels) * 50 + ((x * y) % 7)) & 255;
  });
const raw = (channels: 1 | 2 | 3 | 4) =>
  sharp(pixels(channels), { raw: { width: WIDTH, height: HEIGHT, channels } });
const asBytes = async (image: Sharp) => new Uint8Array(await image.toBuffer());
const idat = (png: Uint8Array) =>
  Buffer.concat(
    pngChunks(png)
      .chunks.filter(({ type }) => type === 'IDAT')
      .map(({ at, length }) => png.subarray(at + 8, at + 8 + length)),
  );
/** What sharp makes of a file, in 8 bits. */
const decoded = async (png: Uint8Array, channels: 1 | 3 | 4) => {
  const image = sharp(png).toColourspace(channels === 1 ? 'b-w' : 'srgb');
  const whole = channels === 4 ? image.ensureAlpha() : channels === 3 ? image.removeAlpha() : image;
  return new Uint8Array(await whole.raw({ depth: 'uchar' }).toBuffer());
};

const largestDifference = (found: Uint8Array, wanted: Uint8Array, step = 1): number => {
  expect(found.length).toBe(wanted.length);
  return found.reduce(
    (most, value, at) => Math.max(most, at % step === 0 ? Math.abs(value - (wanted[at] ?? 0)) : 0),
    0,
  );
};

describe('a PNG without alpha', () => {
  it.each([
    ['colour', () => raw(3).png(), 3],
    ['grey', () => raw(1).toColourspace('b-w').png(), 3],
    ['a palette', () => raw(3).png({ palette: true, colours: 64, dither: 0 }), 3],
    ['sixteen bits', () => raw(3).toColourspace('rgb16').png(), 3],
    ['grey of two bits', () => raw(1).toColourspace('b-w').png({ palette: true, colours: 4 }), 3],
  ] as const)('of %s keeps its packed rows, and every pixel', async (_, make, channels) => {
    const png = await asBytes(make());
    const { picture, bytes } = await embedded(png);
    expect(Buffer.from(bytes).includes(idat(png))).toBe(true);
    const data = await picture.data();
    const wanted = await decoded(png, data.channels === 1 ? 1 : channels);
    // Sixteen bits become eight by rounding in the one and by cutting in the other.
    expect(largestDifference(data.bytes, wanted)).toBeLessThanOrEqual(1);
  });

  it('keeps a colour that is clear as one to leave out', async () => {
    const png = withChunk(await asBytes(raw(3).png()), 'tRNS', [0, 0, 0, 50, 0, 100]);
    // The first pixel has the values 0, 50, 100.
    const { picture } = await embedded(png);
    const { channels, bytes } = await picture.data();
    expect(channels).toBe(4);
    expect(bytes[3]).toBe(0);
    expect(bytes[7]).toBe(255);
  });
});

describe('a see-through PNG', () => {
  it.each([
    ['colour', () => raw(4).png(), 0],
    ['colour, filtered in every way', () => raw(4).png({ adaptiveFiltering: true }), 0],
    ['grey', () => raw(2).toColourspace('b-w').png(), 0],
    ['a palette', () => raw(4).png({ palette: true, colours: 64, dither: 0 }), 0],
    ['sixteen bits', () => raw(4).toColourspace('rgb16').png(), 1],
  ] as const)('of %s keeps every pixel, colours under clear ones too', async (_, make, slack) => {
    const png = await asBytes(make());
    const { picture } = await embedded(png);
    const { channels, bytes } = await picture.data();
    expect(channels).toBe(4);
    expect(largestDifference(bytes, await decoded(png, 4))).toBeLessThanOrEqual(slack);
  });

  it('is lost and named where its rows are broken', async () => {
    const png = await asBytes(raw(4).png());
    const place = pngChunks(png).chunks.find(({ type }) => type === 'IDAT')?.at ?? 0;
    png.fill(0, place + 30, place + 200);
    const { lost, bytes } = await written(job, new Map([['art', png]]));
    expect(lost).toEqual(['art']);
    expect((await readSheets(bytes)).pictures).toEqual([]);
  });
});

describe('a JPEG', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'turned as %i is byte for byte the file, and stands upright',
    async (orientation) => {
      const jpeg = await asBytes(
        raw(3).jpeg({ quality: 100, chromaSubsampling: '4:4:4' }).withMetadata({ orientation }),
      );
      const { picture, bytes } = await embedded(jpeg);
      expect(Buffer.from(bytes).includes(Buffer.from(jpeg))).toBe(true);
      const { data, info } = await sharp(jpeg).autoOrient().raw().toBuffer({ resolveWithObject: true });
      const stored = (await picture.data()).bytes;
      let most = 0;
      for (let y = 0; y < info.height; y += 1) {
        for (let x = 0; x < info.width; x += 1) {
          // The middle of an upright pixel on the page, then in the stored picture.
          const [u, v] = inside(picture.matrix, [
            piece.xMm + ((x + 0.5) / info.width) * piece.widthMm,
            piece.yMm + ((y + 0.5) / info.height) * piece.heightMm,
          ]);
          const at = (Math.floor((1 - v) * HEIGHT) * WIDTH + Math.floor(u * WIDTH)) * 3;
          for (let channel = 0; channel < 3; channel += 1) {
            const wanted = data[(y * info.width + x) * 3 + channel] ?? 0;
            most = Math.max(most, Math.abs((stored[at + channel] ?? 0) - wanted));
          }
        }
      }
      // Two decoders of JPEG differ by rounding; neighbours here differ by more.
      expect(most).toBeLessThanOrEqual(3);
    },
  );

  it('of grey keeps its one channel', async () => {
    const { picture, text } = await embedded(await asBytes(raw(1).toColourspace('b-w').jpeg()));
    expect(text).toContain('/ColorSpace /DeviceGray');
    expect(picture.pixels).toEqual([WIDTH, HEIGHT]);
  });
});

describe('a colour profile', () => {
  it.each(['jpeg', 'png'] as const)('of a %s in Display P3 goes along, three channels', async (format) => {
    const file = await asBytes(raw(3).withIccProfile('p3').toFormat(format));
    const { text, notes } = await embedded(file);
    expect(text).toMatch(/\/N 3 \/Alternate \/DeviceRGB/);
    expect(text).toMatch(/\/ColorSpace \[\/ICCBased \d+ 0 R\]/);
    expect(notes.size).toBe(0);
    // The profile is the file's: its name stands in it where it is not packed.
    const { icc } = await sharp(file).metadata();
    if (format === 'jpeg') expect(text).toContain(Buffer.from(icc ?? []).toString('latin1'));
  });

  it('of several segments is put together in their order', async () => {
    const { icc } = await sharp(await asBytes(raw(3).withIccProfile('p3').jpeg())).metadata();
    const profile = new Uint8Array(icc ?? []);
    const half = Math.floor(profile.length / 2);
    const jpeg = await asBytes(raw(3).jpeg());
    const tagged = withSegments(jpeg, [
      [2, 2, profile.subarray(half)],
      [1, 2, profile.subarray(0, half)],
    ]);
    expect((await embedded(tagged)).text).toContain(Buffer.from(profile).toString('latin1'));
    const torn = withSegments(jpeg, [[1, 2, profile.subarray(0, half)]]);
    const { notes, text } = await embedded(torn);
    expect(notes.get('art')).toBe('unreadable');
    expect(text).toContain('/ColorSpace /DeviceRGB');
  });

  it('of another colour space is left off and told', async () => {
    const cmyk = await asBytes(raw(3).toColourspace('cmyk').withIccProfile('cmyk').jpeg());
    const { icc } = await sharp(cmyk).metadata();
    const profile = new Uint8Array(icc ?? []);
    const pieces = [...Array(Math.ceil(profile.length / 60_000)).keys()].map(
      (at, _, all) => [at + 1, all.length, profile.subarray(at * 60_000, (at + 1) * 60_000)] as const,
    );
    const { notes, text } = await embedded(withSegments(await asBytes(raw(3).jpeg()), pieces));
    expect(notes.get('art')).toBe('otherSpace');
    expect(text).toContain('/ColorSpace /DeviceRGB');
  });

  it('whose first tag lies outside of it is unreadable on the screen and in the file', async () => {
    const jpeg = await asBytes(raw(3).withIccProfile('p3').jpeg());
    // Behind the word, two numbers of the part, a header of 128 bytes, a count and the tag's name: its offset.
    const offset = Buffer.from(jpeg).indexOf('ICC_PROFILE\0') + 12 + 2 + 128 + 4 + 4;
    jpeg.fill(0xff, offset, offset + 4);
    const { notes, text } = await embedded(jpeg);
    expect(await onScreen(jpeg)).toBe('unreadable');
    expect(notes.get('art')).toBe('unreadable');
    expect(text).not.toContain('/ICCBased');
  });

  it('in a chunk whose check sum is wrong says nothing, on the screen and in the file', async () => {
    const png = await asBytes(raw(3).withIccProfile('p3').png());
    const { at = 0, length = 0 } = pngChunks(png).chunks.find(({ type }) => type === 'iCCP') ?? {};
    expect(length).toBeGreaterThan(0);
    png[at + 8 + length] = (png[at + 8 + length] ?? 0) ^ 1;
    const { notes, text } = await embedded(png);
    expect(await onScreen(png)).toBeNull();
    expect(notes.size).toBe(0);
    expect(text).not.toContain('/ICCBased');
  });

  it('that cannot be unpacked is left off and told', async () => {
    const broken = [...Buffer.from('x\0\0'), 1, 2, 3, 4];
    const { notes, text } = await embedded(withChunk(await asBytes(raw(3).png()), 'iCCP', broken));
    expect(notes.get('art')).toBe('unreadable');
    expect(text).toContain('/ColorSpace /DeviceRGB');
  });

  it('is a gamma with the primaries of sRGB where a PNG tells a gamma alone', async () => {
    // gAMA 100,000: light itself, exponent 1.
    const { text } = await embedded(withChunk(await asBytes(raw(3).png()), 'gAMA', [0, 1, 0x86, 0xa0]));
    expect(text).toContain('/Gamma [1 1 1]');
    // The matrix of IEC 61966-2-1, column by column, and its white: both to four places.
    const numbers =
      text
        .match(/\/Matrix \[([^\]]*)\]/)?.[1]
        ?.split(' ')
        .map(Number) ?? [];
    const wanted = [0.4124, 0.2126, 0.0193, 0.3576, 0.7152, 0.1192, 0.1805, 0.0722, 0.9505];
    expect(numbers).toHaveLength(9);
    for (const [at, value] of wanted.entries()) expect(numbers[at]).toBeCloseTo(value, 3);
  });
});

// Helpers

async function onScreen(file: Uint8Array) {
  const header = readHeader(file);
  if (!header.ok || header.value.kind !== 'raster') throw new Error('no header');
  return profileOfFile(file, header.value);
}

function inside([a, b, c, d, e, f]: Six, [xMm = 0, yMm = 0]: readonly number[]): readonly [number, number] {
  // The matrix is in points from below; the page is 297 mm high.
  const x = (xMm * 72) / 25.4 - e;
  const y = ((297 - yMm) * 72) / 25.4 - f;
  const whole = a * d - b * c;
  return [(d * x - c * y) / whole, (a * y - b * x) / whole];
}

/** A chunk behind the header, or before the data where a palette or colour must come first. */
const withChunk = (png: Uint8Array, type: string, data: readonly number[]): Uint8Array =>
  Uint8Array.from([...png.subarray(0, 33), ...pngChunk(type, data), ...png.subarray(33)]);

function withSegments(
  jpeg: Uint8Array,
  pieces: readonly (readonly [number, number, Uint8Array])[],
): Uint8Array {
  const segments = pieces.map(([number, count, data]) => {
    const body = Buffer.concat([Buffer.from('ICC_PROFILE\0'), Buffer.from([number, count]), data]);
    const head = Buffer.from([0xff, 0xe2, 0, 0]);
    head.writeUInt16BE(body.length + 2, 2);
    return Buffer.concat([head, body]);
  });
  return new Uint8Array(Buffer.concat([jpeg.subarray(0, 2), ...segments, jpeg.subarray(2)]));
}
