import { describe, expect, it, test } from 'vitest';
import { dotArea } from '@/lib/ink/dotArea';
import { generateBlack } from '@/lib/ink/generateBlack';
import { measureInk } from '@/lib/ink/measureInk';
import { decodeSrgb, encodeSrgb } from '@/lib/picture/srgb';
import { black, cyan, gridOf, magenta, type Pixel, white, yellow } from '@/tests/fixtures/pictures/gridOf';

/** Reflectance of an optical density. */
const reflectance = (density: number) => 10 ** -density;
const onPaper = (density: number, solidDensity: number, n: number) =>
  dotArea(reflectance(density), { paper: 1, solid: reflectance(solidDensity), n });

describe('dotArea gives published areas', () => {
  // A. Murray, J. Franklin Institute 221, 721–744, 1936: D = log10(1 / (1 − a (1 − 10^−Ds))).
  test('Murray and Davies: half covered at a solid density of 1.5 reads 0.28751', () => {
    expect(onPaper(0.28751, 1.5, 1)).toBeCloseTo(0.5, 5);
  });
  test('Murray and Davies: density 0.30 at a solid of 1.5 is 0.51510', () => {
    expect(onPaper(0.3, 1.5, 1)).toBeCloseTo(0.5151, 5);
  });
  // J. Yule and W. Nielsen, TAGA Proceedings 1951, 65–76: a = (1 − 10^(−Dt/n)) / (1 − 10^(−Ds/n)).
  test.each([
    [1.7, 0.3843],
    [2, 0.35522],
  ])('Yule and Nielsen, n %d: density 0.30 at a solid of 1.5 is %d', (n, area) => {
    expect(onPaper(0.3, 1.5, n)).toBeCloseTo(area, 5);
  });
  // Half covered, ink 0.05 on paper 0.85 throws back 0.45 with n = 1 and 0.328078 with n = 2.
  test.each([
    [1, 0.45],
    [2, 0.328078],
  ])('Yule and Nielsen, n %d: %d of the light is half covered', (n, light) => {
    expect(dotArea(light, { paper: 0.85, solid: 0.05, n })).toBeCloseTo(0.5, 6);
  });
  it('keeps to 0–1 outside what the halftone can show', () => {
    expect(dotArea(0.9, { paper: 0.85, solid: 0.05, n: 2 })).toBe(0);
    expect(dotArea(0.01, { paper: 0.85, solid: 0.05, n: 2 })).toBe(1);
  });
});

describe('sRGB of IEC 61966-2-1', () => {
  test('encode(0.18) is 0.461356129500442', () => {
    expect(encodeSrgb(0.18)).toBeCloseTo(0.461356129500442, 14);
  });
  test.each([
    [0.5, 0.214041],
    [128 / 255, 0.215861],
    [119 / 255, 0.184475],
    [0, 0],
    [1, 1],
  ])('decode(%d) is %d', (encoded, light) => expect(decodeSrgb(encoded)).toBeCloseTo(light, 6));
  test('both ways meet at the joint within the gap the published constants leave', () => {
    expect(Math.abs(encodeSrgb(decodeSrgb(0.04045)) - 0.04045)).toBeLessThan(1e-7);
    expect(Math.abs(decodeSrgb(0.04045 + 1e-12) - decodeSrgb(0.04045))).toBeLessThan(3e-8);
  });
});

// ISO 32000-1, 10.3.4: k = min(C, M, Y); with BG(k) = UCR(k) = k the ink falls by 2k.
describe('generateBlack', () => {
  test.each([
    [0.8, 0.5, 0.3, { cyan: 0.5, magenta: 0.2, yellow: 0, black: 0.3 }],
    [1, 1, 1, { cyan: 0, magenta: 0, yellow: 0, black: 1 }],
    [0, 0.7, 0.4, { cyan: 0, magenta: 0.7, yellow: 0.4, black: 0 }],
  ])('of %d, %d, %d', (c, m, y, expected) => {
    const inks = generateBlack(c, m, y, 1);
    expect(inks.cyan).toBeCloseTo(expected.cyan, 12);
    expect(inks.magenta).toBeCloseTo(expected.magenta, 12);
    expect(inks.yellow).toBeCloseTo(expected.yellow, 12);
    expect(inks.black).toBeCloseTo(expected.black, 12);
    expect(inks.cyan + inks.magenta + inks.yellow + inks.black).toBeCloseTo(c + m + y - 2 * inks.black, 12);
  });
});

describe('areas of overprints by Demichel give back the inks they come from', () => {
  const [red, green, blue]: readonly Pixel[] = [
    [255, 0, 0, 255],
    [0, 255, 0, 255],
    [0, 0, 255, 255],
  ];
  /** A picture of 100 pixels, so many of each colour. */
  const areas = (parts: readonly (readonly [number, Pixel | undefined])[]) => {
    const pixels = parts.flatMap(([count, pixel]) => Array<Pixel>(count).fill(pixel ?? white));
    return measureInk(gridOf(10, 10, (x, y) => pixels[y * 10 + x] ?? white)).coverage;
  };

  // S. Westland, C. Ripamonti, Computational Colour Science Using MATLAB, Wiley 2004, eq. 9.7, p. 147.
  test('cyan 0.4 and yellow 0.4: white 0.36, cyan 0.24, yellow 0.24, green 0.16', () => {
    const inks = areas([
      [36, white],
      [24, cyan],
      [24, yellow],
      [16, green],
    ]);
    expect(inks.cyan).toBeCloseTo(0.4, 12);
    expect(inks.yellow).toBeCloseTo(0.4, 12);
    expect(inks.magenta + inks.black).toBeCloseTo(0, 12);
  });

  // All eight overprints; the three-ink one is black here, so each ink is what it was less 0.03.
  test('cyan 0.5, magenta 0.3, yellow 0.2: black takes the 0.03 where all three meet', () => {
    const inks = areas([
      [28, white],
      [28, cyan],
      [12, magenta],
      [7, yellow],
      [12, blue],
      [7, green],
      [3, red],
      [3, black],
    ]);
    expect(inks.cyan).toBeCloseTo(0.47, 12);
    expect(inks.magenta).toBeCloseTo(0.27, 12);
    expect(inks.yellow).toBeCloseTo(0.17, 12);
    expect(inks.black).toBeCloseTo(0.03, 12);
  });
});
