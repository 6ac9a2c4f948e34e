import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import { isCutShort } from '@/lib/picture/isCutShort';
import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { readHeader, refuseBytes } from '@/lib/picture/readHeader';
import {
  adobe,
  exifBlock,
  exifSegment,
  jfif,
  jpegFile,
  pHYs,
  pngChunk,
  pngFile,
  textBytes,
  u32,
  webpFile,
} from '@/tests/fixtures/pictures/fileBytes';
import { cases } from '@/tests/tools/cases';

function raster(bytes: Uint8Array): RasterHeader {
  const header = readHeader(bytes);
  if (!header.ok || header.value.kind !== 'raster') throw new Error(JSON.stringify(header));
  return header.value;
}

const ppiOf = (bytes: Uint8Array) => {
  const { density } = raster(bytes);
  return density.kind === 'unknown' ? null : density.xPpi;
};

describe('readHeader knows a picture by its first bytes, never by a name', () => {
  test.each<[string, Uint8Array, object]>([
    ['PNG', pngFile(30, 20), { format: 'png', bitsPerChannel: 8, mayBeClear: false }],
    ['PNG of 16 bits', pngFile(30, 20, { depth: 16 }), { format: 'png', bitsPerChannel: 16 }],
    ['PNG with alpha', pngFile(30, 20, { colourType: 6 }), { format: 'png', mayBeClear: true }],
    [
      'palette PNG of 1 bit with a clear colour',
      pngFile(30, 20, { depth: 1, colourType: 3, chunks: [pngChunk('tRNS', [0])] }),
      { format: 'png', bitsPerChannel: 1, mayBeClear: true },
    ],
    [
      'moving PNG',
      pngFile(30, 20, { chunks: [pngChunk('acTL', [...u32(2), ...u32(0)])] }),
      { isAnimated: true },
    ],
    ['JPEG', jpegFile(30, 20), { format: 'jpeg', mayBeClear: false, isAnimated: false }],
    ['progressive grey JPEG', jpegFile(30, 20, { frame: 0xc2, components: 1 }), { format: 'jpeg' }],
    ['WebP with alpha', webpFile(30, 20, 0x10), { format: 'webp', mayBeClear: true, isAnimated: false }],
    ['moving WebP', webpFile(30, 20, 0x02), { format: 'webp', isAnimated: true }],
  ])('%s', (_, bytes, expected) => {
    expect(raster(bytes)).toMatchObject({ size: { width: 30, height: 20 }, ...expected });
  });

  test.each<[string, Uint8Array, object]>([
    ['sRGB chunk', pngFile(9, 9, { chunks: [pngChunk('sRGB', [0])] }), { colourTag: 'sRGB' }],
    ['profile', pngFile(9, 9, { chunks: [pngChunk('iCCP', [65, 0, 0])] }), { colourTag: 'profile' }],
    ['gamma of sRGB', pngFile(9, 9, { chunks: [pngChunk('gAMA', u32(45_455))] }), { colourTag: 'untagged' }],
    ['gamma of 1', pngFile(9, 9, { chunks: [pngChunk('gAMA', u32(100_000))] }), { colourTag: 'profile' }],
    ['nothing', jpegFile(9, 9), { colourTag: 'untagged' }],
  ])('tells what the colours mean: %s', (_, bytes, expected) => {
    expect(raster(bytes)).toMatchObject(expected);
  });
});

describe('declared density', () => {
  // PNG Specification, third edition (W3C 2025), pHYs: pixels a metre, an inch being 0.0254 m exactly.
  test.each([
    [72, 2835, 72.009],
    [96, 3780, 96.012],
    [150, 5906, 150.0124],
    [300, 11811, 299.9994],
    [600, 23622, 599.9988],
  ])('PNG: %d ppi are stored as %d a metre and come back as %d', (_, stored, back) => {
    expect(ppiOf(pngFile(9, 9, { chunks: [pHYs(stored, 1)] }))).toBeCloseTo(back, 4);
  });

  test('PNG: unit 0 tells the shape of a pixel only', () => {
    expect(ppiOf(pngFile(9, 9, { chunks: [pHYs(11811, 0)] }))).toBeNull();
  });

  // JFIF 1.02, APP0; libvips/libvips issue 1641: 118 a centimetre is 299.7 ppi.
  test.each([
    [0, 300, null],
    [1, 300, 300],
    [2, 118, 299.72],
  ])('JFIF: unit %d with %d is %j ppi', (unit, density, ppi) => {
    expect(ppiOf(jpegFile(9, 9, { segments: [jfif(unit, density)] }))).toEqual(ppi);
  });

  // TIFF 6.0 and Exif 2.32, tag 296: 2 is the inch in Exif, the centimetre in JFIF.
  test.each([
    [1, null],
    [2, 300],
    [3, 762],
    [undefined, 300],
  ])('EXIF: 300 with unit %j is %j ppi', (unit, ppi) => {
    const block = exifBlock({ resolution: 300, ...(unit === undefined ? {} : { unit }) });
    expect(ppiOf(jpegFile(9, 9, { segments: [exifSegment(block)] }))).toEqual(ppi);
  });

  test('JFIF goes before EXIF where both tell one, and after it where its unit is 0', () => {
    const exif = exifSegment(exifBlock({ resolution: 72, unit: 2 }));
    expect(ppiOf(jpegFile(9, 9, { segments: [jfif(1, 300), exif] }))).toBe(300);
    expect(ppiOf(jpegFile(9, 9, { segments: [jfif(0, 1), exif] }))).toBe(72);
  });
});

describe('orientation', () => {
  const files = (order: 'II' | 'MM', orientation: number): readonly [string, Uint8Array][] => {
    const block = exifBlock({ order, orientation });
    return [
      ['JPEG', jpegFile(30, 20, { segments: [exifSegment(block)] })],
      ['PNG', pngFile(30, 20, { chunks: [pngChunk('eXIf', block)] })],
      ['WebP', webpFile(30, 20, 0x08, block)],
    ];
  };

  // dfa1234/ngx-image-compress issue 64: turned exactly once.
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('%d gives the upright size in every format and byte order', (turn) => {
    const upright = turn >= 5 ? { width: 20, height: 30 } : { width: 30, height: 20 };
    for (const order of ['II', 'MM'] as const) {
      for (const [format, bytes] of files(order, turn)) {
        expect(raster(bytes), format).toMatchObject({ orientation: turn, size: upright });
      }
    }
  });

  test.each([0, 9, 255])('%d, which is none, leaves the picture as it is', (turn) => {
    expect(
      raster(jpegFile(30, 20, { segments: [exifSegment(exifBlock({ orientation: turn }))] })),
    ).toMatchObject({ orientation: 1, size: { width: 30, height: 20 } });
  });
});

describe('a file that cannot be used gets a reason with facts', () => {
  test.each<[string, Uint8Array, object]>([
    ['empty', new Uint8Array(), { kind: 'empty' }],
    ['text named as a picture', textBytes('hello'), { kind: 'notAPicture', begins: '68 65 6c 6c 6f' }],
    ['a PDF', textBytes('%PDF-1.7'), { kind: 'otherFormat', format: 'PDF' }],
    ['a saved web page', textBytes('<!DOCTYPE html><p>'), { kind: 'otherFormat', format: 'web page' }],
    ['a PNG cut inside its header', pngFile(9, 9).subarray(0, 20), { kind: 'cutShort', format: 'png' }],
    [
      'a PNG cut before its end',
      pngFile(9, 9).subarray(0, 50),
      { kind: 'cutShort', format: 'png', bytes: 50 },
    ],
    ['a JPEG cut before its frame', jpegFile(9, 9).subarray(0, 9), { kind: 'cutShort', format: 'jpeg' }],
    ['a JPEG cut in its pixels', jpegFile(9, 9).slice(0, -2), { kind: 'cutShort', format: 'jpeg' }],
    ['a WebP cut short', webpFile(9, 9, 0).slice(0, -1), { kind: 'cutShort', format: 'webp' }],
    ['a GIF cut short', textBytes('GIF89a\x09\0\x09\0\0\0\0'), { kind: 'cutShort', format: 'gif' }],
    ['a PNG of no width', pngFile(0, 9), { kind: 'damaged', format: 'png', part: 'IHDR' }],
    ['a PNG of an odd depth', pngFile(9, 9, { depth: 3 }), { kind: 'damaged', part: 'IHDR' }],
    ['30,000 px wide', pngFile(30_000, 9), { kind: 'tooLong', width: 30_000, mostSidePx: 16_384 }],
    ['1 × 1', pngFile(1, 1), { kind: 'tooSmall', width: 1, height: 1 }],
    ['100 million pixels', jpegFile(10_000, 10_000), { kind: 'tooManyPixels', width: 10_000 }],
    ['a lossless JPEG', jpegFile(9, 9, { frame: 0xc3 }), { kind: 'oddCoding', coding: 'lossless' }],
    ['an arithmetic JPEG', jpegFile(9, 9, { frame: 0xc9 }), { kind: 'oddCoding', coding: 'arithmetic' }],
    ['a JPEG of 12 bits', jpegFile(9, 9, { bits: 12 }), { kind: 'oddCoding', coding: 'moreThan8Bits' }],
    // lovell/sharp issue 1649: with and without the marker told apart, and never read inverted.
    ['a CMYK JPEG', jpegFile(9, 9, { components: 4 }), { kind: 'cmyk', marker: 'none' }],
    [
      'a CMYK JPEG with the marker',
      jpegFile(9, 9, { components: 4, segments: [adobe(0)] }),
      { kind: 'cmyk', marker: 'adobe' },
    ],
    [
      'a YCCK JPEG',
      jpegFile(9, 9, { components: 4, segments: [adobe(2)] }),
      { kind: 'cmyk', marker: 'adobe' },
    ],
  ])('%s', (_, bytes, problem) => {
    expect(inspectPicture(bytes)).toMatchObject({ ok: false, problem });
  });

  // python-pillow/Pillow issue 515: refused from its header, though the file is also cut short.
  it('refuses a PNG of 68 bytes that declares 40,000 × 40,000 px by that declaration', () => {
    const bytes = pngFile(40_000, 40_000);
    expect(bytes.length).toBeLessThanOrEqual(68);
    expect(inspectPicture(bytes)).toMatchObject({
      problem: { kind: 'tooLong', width: 40_000, height: 40_000 },
    });
  });

  it('refuses 5 GB before a byte is read', () => {
    expect(refuseBytes(5e9)).toMatchObject({ kind: 'tooManyBytes', bytes: 5e9 });
    expect(refuseBytes(4e6)).toBeNull();
  });

  it('does not take the small preview in a header for the end of a JPEG', () => {
    const preview = exifSegment([...exifBlock({ orientation: 1 }), 0xff, 0xd8, 0xff, 0xd9]);
    const bytes = jpegFile(9, 9, { segments: [preview] });
    expect(isCutShort(bytes, 'jpeg')).toBe(false);
    expect(inspectPicture(bytes.slice(0, -2))).toMatchObject({ problem: { kind: 'cutShort' } });
  });

  it('takes a JPEG as whole where a marker without a length stands before its pixels: T.81, table B.1', () => {
    const temporary = [0xff, 0x01];
    const bytes = jpegFile(9, 9, { segments: [temporary] });
    expect(isCutShort(bytes, 'jpeg')).toBe(false);
    expect(isCutShort(bytes.slice(0, -2), 'jpeg')).toBe(true);
  });

  const whole = [
    pngFile(30, 20, { chunks: [pHYs(11811, 1), pngChunk('eXIf', exifBlock({ orientation: 6 }))] }),
    jpegFile(30, 20, { segments: [jfif(1, 300), exifSegment(exifBlock({ orientation: 6, resolution: 9 }))] }),
    webpFile(30, 20, 0x08, exifBlock({ orientation: 6 })),
    textBytes('GIF89a\x1e\0\x14\0\0\0\0,\0\0\0\0\x1e\0\x14\0\0\x02\x01\0\0;'),
    textBytes('<svg width="3" height="2" viewBox="0 0 3 2"><path d="M0 0h1"/></svg>'),
  ];

  it('answers any damaged file with a header or a reason, and never throws', () => {
    const damaged = fc
      .record({
        file: fc.constantFrom(...whole),
        keep: fc.double({ min: 0, max: 1, noNaN: true }),
        changes: fc.array(fc.tuple(fc.nat(200), fc.nat(255)), { maxLength: 6 }),
      })
      .map(({ file, keep, changes }) => {
        const bytes = file.slice(0, Math.ceil(file.length * keep));
        for (const [at, value] of changes) if (at < bytes.length) bytes[at] = value;
        return bytes;
      });
    fc.assert(
      fc.property(fc.oneof(damaged, fc.uint8Array({ maxLength: 200 })), (bytes) => {
        expect(inspectPicture(bytes)).toHaveProperty('ok');
      }),
      cases(600),
    );
  });
});
