// @vitest-environment node
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, it, test } from 'vitest';
import { profileOfFile } from '@/app/_artwork/profileOfFile';
import { knownSpaces } from '@/lib/picture/profile/knownColours';
import { nameProfile } from '@/lib/picture/profile/nameProfile';
import { readHeader } from '@/lib/picture/readHeader';
import {
  jpegFile,
  jpegSegment,
  pngChunk,
  pngFile,
  textBytes,
  u16,
  u32,
} from '@/tests/fixtures/pictures/fileBytes';

const word = (text: string) => [...textBytes(text)];
const fixed = (value: number) => u32(Math.round(value * 65_536) >>> 0);
const xyzTag = (xyz: readonly number[]) => [...word('XYZ '), ...u32(0), ...xyz.flatMap(fixed)];
/** One number of 8 bits before the point and 8 behind: a gamma. */
const gammaTag = (gamma: number) => [
  ...word('curv'),
  ...u32(0),
  ...u32(1),
  ...u16(Math.round(gamma * 256)),
  0,
  0,
];
/** The curve of sRGB as a formula: IEC 61966-2-1. */
const srgbCurve = [
  ...[...word('para'), ...u32(0), ...u16(3), 0, 0],
  ...[2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045].flatMap(fixed),
];

function iccProfile(space: string, tags: Readonly<Record<string, readonly number[]>>): Uint8Array {
  const names = Object.keys(tags);
  let from = 128 + 4 + names.length * 12;
  const table = names.flatMap((name) => {
    const length = tags[name]?.length ?? 0;
    from += length;
    return [...word(name), ...u32(from - length), ...u32(length)];
  });
  const head = [...u32(from), 0, 0, 0, 0, 4, 0x40, 0, 0, ...word('mntr'), ...word(space), ...word('XYZ ')];
  while (head.length < 36) head.push(0);
  head.push(...word('acsp'));
  while (head.length < 128) head.push(0);
  return Uint8Array.from([...head, ...u32(names.length), ...table, ...Object.values(tags).flat()]);
}

/** A profile of primaries and one curve. */
const rgbProfile = (xyz: readonly (readonly number[])[], curve: readonly number[]) =>
  iccProfile('RGB ', {
    rXYZ: xyzTag(xyz[0] ?? []),
    gXYZ: xyzTag(xyz[1] ?? []),
    bXYZ: xyzTag(xyz[2] ?? []),
    rTRC: curve,
    gTRC: curve,
    bTRC: curve,
  });

/* Primaries of ICC profiles of 1998 and later, from memory: adapted to D50, to four places. */
const srgb = [
  [0.436, 0.2224, 0.0139],
  [0.3851, 0.7169, 0.0971],
  [0.1431, 0.0606, 0.7139],
];
const adobe = [
  [0.6097, 0.3111, 0.0195],
  [0.2053, 0.6257, 0.0609],
  [0.1492, 0.0632, 0.7446],
];
/** ROMM RGB, ISO 22028-2. */
const romm = [
  [0.7977, 0.288, 0],
  [0.1352, 0.7119, 0],
  [0.0313, 0.0001, 0.8249],
];

/* Lam's and Rigg's matrix as in ICC.1:2022, annex E; D65 and D50 by CIE 15. */
const bradford = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const D65 = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329];
const D50 = [0.9642, 1, 0.8249];
type Matrix = readonly (readonly number[])[];
const times = (matrix: Matrix, vector: readonly number[]) =>
  matrix.map((row) => row.reduce((sum, value, column) => sum + value * (vector[column] ?? 0), 0));
function solve(matrix: Matrix, right: readonly number[]): number[] {
  const det = ([
    [a = 0, b = 0, c = 0] = [],
    [d = 0, e = 0, f = 0] = [],
    [g = 0, h = 0, i = 0] = [],
  ]: Matrix) => a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const whole = det(matrix);
  return [0, 1, 2].map(
    (at) => det(matrix.map((row, y) => row.map((value, x) => (x === at ? (right[y] ?? 0) : value)))) / whole,
  );
}

describe('primaries', () => {
  test.each(knownSpaces)('$name: its published x and y come to its X, Y and Z under D50', ({ xy, xyz }) => {
    const columns = xy.map(([x, y]) => [x / y, 1, (1 - x - y) / y]);
    const matrix = [0, 1, 2].map((row) => columns.map((column) => column[row] ?? 0));
    const shares = solve(matrix, D65);
    const [from, to] = [times(bradford, D65), times(bradford, D50)];
    columns.forEach((column, index) => {
      const cone = times(
        bradford,
        column.map((value) => value * (shares[index] ?? 0)),
      ).map((value, at) => (value * (to[at] ?? 0)) / (from[at] ?? 1));
      solve(bradford, cone).forEach((value, at) => {
        expect(value).toBeCloseTo(xyz[index]?.[at] ?? 0, 3);
      });
    });
  });
});

describe('a profile is named by what it does', () => {
  test.each<[string, Uint8Array, string]>([
    ['sRGB with its formula', rgbProfile(srgb, srgbCurve), 'sRGB'],
    ['sRGB with a gamma of 2.2', rgbProfile(srgb, gammaTag(2.2)), 'sRGB'],
    ['Adobe RGB (1998)', rgbProfile(adobe, gammaTag(2.19921875)), 'adobeRgbLike'],
    ['primaries of sRGB, straight', rgbProfile(srgb, [...word('curv'), ...u32(0), ...u32(0)]), 'unknown'],
    ['primaries of sRGB at 1.8', rgbProfile(srgb, gammaTag(1.8)), 'unknown'],
    ['ROMM', rgbProfile(romm, gammaTag(1.8)), 'unknown'],
    ['tables', iccProfile('RGB ', { A2B0: [...word('mft2'), 0, 0, 0, 0] }), 'unknown'],
    ['without curves', iccProfile('RGB ', { rXYZ: xyzTag([1, 1, 1]) }), 'unreadable'],
    ['of inks', iccProfile('CMYK', { A2B0: word('mft2') }), 'otherSpace'],
    ['of Lab', iccProfile('Lab ', { A2B0: word('mft2') }), 'otherSpace'],
    ['of grey', iccProfile('GRAY', { kTRC: gammaTag(2.2) }), 'otherSpace'],
    ['nothing', new Uint8Array(), 'unreadable'],
    ['cut in its table', rgbProfile(srgb, srgbCurve).subarray(0, 150), 'unreadable'],
    ['of another mark', rgbProfile(srgb, srgbCurve).map((byte, at) => (at === 36 ? 0 : byte)), 'unreadable'],
  ])('%s', (_, profile, name) => {
    expect(nameProfile(profile, ['RGB '])).toBe(name);
  });

  it('takes a profile of grey where the picture is grey', () => {
    expect(nameProfile(iccProfile('GRAY', { kTRC: gammaTag(2.2) }), ['GRAY'])).toBe('unknown');
  });
});

async function named(bytes: Uint8Array) {
  const header = readHeader(bytes);
  if (!header.ok || header.value.kind !== 'raster') throw new Error(JSON.stringify(header));
  return profileOfFile(bytes, header.value);
}
const image = () => sharp({ create: { width: 9, height: 9, channels: 3, background: '#e04020' } });

describe('the profile in a file', () => {
  test.each([
    ['p3', 'jpeg', 'displayP3'],
    ['p3', 'png', 'displayP3'],
    ['p3', 'webp', 'displayP3'],
    ['srgb', 'jpeg', 'sRGB'],
    ['srgb', 'png', 'sRGB'],
    ['srgb', 'webp', 'sRGB'],
  ] as const)('%s written by an independent library into a %s', async (profile, format, name) => {
    expect(await named(await image().withIccProfile(profile)[format]().toBuffer())).toBe(name);
  });

  const part = (number: number, of: number, bytes: Uint8Array) =>
    jpegSegment(0xe2, [...word('ICC_PROFILE\0'), number, of, ...bytes]);
  const whole = rgbProfile(adobe, gammaTag(2.2));
  const inks = iccProfile('CMYK', { A2B0: word('mft2') });
  const iccp = (bytes: Uint8Array) => pngChunk('iCCP', [...word('any'), 0, 0, ...deflateSync(bytes)]);
  const png = (...chunks: number[][]) => pngFile(9, 9, { chunks });
  const gamma = pngChunk('gAMA', u32(45_455));
  /* White of D65, then the primaries of SMPTE EG 432-1, times 100,000. */
  const p3 = pngChunk('cHRM', [31_270, 32_900, 68_000, 32_000, 26_500, 69_000, 15_000, 6_000].flatMap(u32));

  test.each<[string, Uint8Array, string | null]>([
    [
      'in two parts out of order',
      jpegFile(9, 9, { segments: [part(2, 2, whole.subarray(200)), part(1, 2, whole.subarray(0, 200))] }),
      'adobeRgbLike',
    ],
    ['with a part missing', jpegFile(9, 9, { segments: [part(1, 2, whole)] }), 'unreadable'],
    ['of inks in a JPEG of colours', jpegFile(9, 9, { segments: [part(1, 1, inks)] }), 'unreadable'],
    ['of inks in a PNG', png(iccp(inks)), 'unreadable'],
    ['that does not unpack', png(pngChunk('iCCP', [...word('any'), 0, 0, 1, 2, 3])), 'unreadable'],
    ['in a PNG', png(iccp(whole)), 'adobeRgbLike'],
    ['that stands above sRGB', png(iccp(whole), pngChunk('sRGB', [0])), 'adobeRgbLike'],
    ['below a code of Display P3', png(pngChunk('cICP', [12, 13, 0, 1]), iccp(whole)), 'displayP3'],
    ['a code of sRGB', png(pngChunk('cICP', [1, 13, 0, 1])), 'sRGB'],
    ['a code of film', png(pngChunk('cICP', [9, 16, 0, 1])), 'unknown'],
    ['sRGB above a gamma of 1', png(pngChunk('sRGB', [0]), pngChunk('gAMA', u32(100_000))), 'sRGB'],
    ['primaries in a PNG', png(gamma, p3), 'displayP3'],
    ['a gamma of 1', png(pngChunk('gAMA', u32(100_000))), 'unknown'],
    ['none', png(), null],
  ])('%s', async (_, bytes, name) => {
    expect(await named(bytes)).toBe(name);
  });
});
