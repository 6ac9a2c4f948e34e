import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { totalShare } from '@/lib/ink/generateBlack';
import { inkMeter } from '@/lib/ink/inkMeter';
import { inkMl } from '@/lib/ink/inkMl';
import { measureInk } from '@/lib/ink/measureInk';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import {
  black,
  clear,
  cyan,
  gridOf,
  magenta,
  type Pixel,
  white,
  yellow,
} from '@/tests/fixtures/pictures/gridOf';
import { cases } from '@/tests/tools/cases';

const channels = (grid: PixelGrid) => {
  const { coverage } = measureInk(grid);
  return [coverage.cyan, coverage.magenta, coverage.yellow, coverage.black];
};
const even =
  (...pixels: readonly Pixel[]) =>
  (x: number, y: number): Pixel =>
    pixels[(x + y) % pixels.length] ?? clear;

describe('coverage of pictures whose ink is known', () => {
  test.each<[string, PixelGrid, readonly number[]]>([
    ['white', gridOf(8, 8, () => white), [0, 0, 0, 0]],
    ['black is black ink alone', gridOf(8, 8, () => black), [0, 0, 0, 1]],
    ['half white, half cyan', gridOf(8, 8, (x) => (x < 4 ? white : cyan)), [0.5, 0, 0, 0]],
    ['a chequerboard of white and black', gridOf(8, 8, even(white, black)), [0, 0, 0, 0.5]],
    ['thirds of the inks', gridOf(9, 9, even(cyan, magenta, yellow)), [1 / 3, 1 / 3, 1 / 3, 0]],
    ['red is magenta and yellow', gridOf(4, 4, () => [255, 0, 0, 255]), [0, 1, 1, 0]],
    ['clear black', gridOf(4, 4, () => clear), [0, 0, 0, 0]],
    ['one pixel of ten', gridOf(10, 1, (x) => (x === 3 ? magenta : clear)), [0, 0.1, 0, 0]],
    // Light of 188/255 is 0.502886: ink 1 − √0.502886 = 0.290855.
    ['a grey by hand', gridOf(4, 4, () => [188, 188, 188, 255]), [0, 0, 0, 0.290855]],
    // Light of 64/255 is 0.0512695: ink 0.7735724, of which 0.2908551 is grey in common with 188.
    ['a brown by hand', gridOf(4, 4, () => [188, 64, 64, 255]), [0, 0.4827173, 0.4827173, 0.2908551]],
  ])('%s', (_, grid, expected) => {
    for (const [index, share] of channels(grid).entries())
      expect(share).toBeCloseTo(expected[index] ?? -1, 6);
  });

  it('of a ramp through every grey is the mean of the model, value by value', () => {
    let sum = 0;
    for (let value = 0; value < 256; value += 1) {
      const u = value / 255;
      sum += 1 - Math.sqrt(u <= 0.04045 ? u / 12.92 : ((u + 0.055) / 1.055) ** 2.4);
    }
    const [, , , k] = channels(gridOf(256, 1, (x) => [x, x, x, 255]));
    expect(k).toBeCloseTo(sum / 256, 12);
  });

  it('lays half-clear ink on white paper first', () => {
    // 51/255 of black on white is 204/255, light 0.603827: ink 1 − √0.603827 = 0.222937.
    expect(channels(gridOf(3, 3, () => [0, 0, 0, 51]))[3]).toBeCloseTo(0.222937, 6);
    expect(channels(gridOf(3, 3, () => [204, 204, 204, 255]))[3]).toBeCloseTo(0.222937, 6);
  });
});

describe('heavy and pale pixels', () => {
  it('counts the share above 180 %', () => {
    const heavy: Pixel = [255, 0, 0, 255];
    expect(measureInk(gridOf(10, 10, (x) => (x < 3 ? heavy : black))).heavyShare).toBeCloseTo(0.3, 12);
  });
  it('does not count exactly 180 %, nor clear pixels', () => {
    expect(measureInk(gridOf(4, 4, () => [255, 0, 0, 0])).heavyShare).toBe(0);
    // 90 % of two inks: light 0.01, encoded 0.099853 × 255 = 25.46; 26 is just lighter.
    expect(measureInk(gridOf(4, 4, () => [255, 26, 26, 255])).heavyShare).toBe(0);
    expect(measureInk(gridOf(4, 4, () => [255, 25, 25, 255])).heavyShare).toBe(1);
  });
  it('counts tints between 2 and 8 %', () => {
    const tint: Pixel = [245, 250, 255, 255];
    expect(measureInk(gridOf(4, 4, (x) => (x === 0 ? tint : white))).paleShare).toBeCloseTo(0.25, 12);
  });
});

const value = fc.nat(255);
const pixel = fc.tuple(value, value, value, fc.oneof(value, fc.constantFrom(0, 255)));
const pictures = fc
  .record({ width: fc.integer({ min: 1, max: 9 }), pixels: fc.array(pixel, { minLength: 9, maxLength: 81 }) })
  .map(({ width, pixels }) =>
    gridOf(width, Math.floor(pixels.length / width), (x, y) => pixels[y * width + x] ?? clear),
  );

describe('laws of coverage', () => {
  it('each channel and the heavy share lie in 0–1, their sum in 0–2', () => {
    fc.assert(
      fc.property(pictures, (grid) => {
        const { coverage, heavyShare } = measureInk(grid);
        for (const share of [...Object.values(coverage), heavyShare]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect(totalShare(coverage)).toBeLessThanOrEqual(2 + 1e-9);
      }),
      cases(300),
    );
  });

  it('what lies under a clear pixel changes nothing', () => {
    fc.assert(
      fc.property(pictures, value, (grid, hidden) => {
        const other = grid.rgba.slice();
        for (let at = 0; at < other.length; at += 4) if (other[at + 3] === 0) other.fill(hidden, at, at + 3);
        expect(channels({ ...grid, rgba: other })).toEqual(channels(grid));
      }),
      cases(200),
    );
  });

  it('the same picture of 16 bits has the same ink', () => {
    fc.assert(
      fc.property(pictures, (grid) => {
        const deep = { ...grid, rgba: Uint16Array.from(grid.rgba, (number) => number * 257) };
        for (const [index, share] of channels(deep).entries()) {
          expect(Math.abs(share - (channels(grid)[index] ?? -1))).toBeLessThan(1e-4);
        }
      }),
      cases(200),
    );
  });

  it('strips of any height add up to the whole', () => {
    fc.assert(
      fc.property(pictures, fc.integer({ min: 1, max: 9 }), (grid, rows) => {
        const meter = inkMeter();
        for (let y = 0; y < grid.height; y += rows) {
          const height = Math.min(rows, grid.height - y);
          const row = grid.width * 4;
          meter.add({ width: grid.width, height, rgba: grid.rgba.subarray(y * row, (y + height) * row) });
        }
        expect(totalShare(meter.read().coverage)).toBeCloseTo(totalShare(measureInk(grid).coverage), 12);
      }),
      cases(100),
    );
  });

  it('a darker picture takes no less ink than the lighter one, channel sum before black', () => {
    fc.assert(
      fc.property(pictures, fc.integer({ min: 0, max: 50 }), (grid, less) => {
        const darker = grid.rgba.map((number, at) => (at % 4 === 3 ? number : Math.max(0, number - less)));
        const inThreeInks = ({
          cyan: c,
          magenta: m,
          yellow: y,
          black: k,
        }: ReturnType<typeof measureInk>['coverage']) => c + m + y + 3 * k;
        expect(inThreeInks(measureInk({ ...grid, rgba: darker }).coverage)).toBeGreaterThanOrEqual(
          inThreeInks(measureInk(grid).coverage) - 1e-12,
        );
      }),
      cases(200),
    );
  });
});

describe('inkMl', () => {
  it('is near the rough rule of a square foot of heavy colour, 1 to 1.5 mL', () => {
    const foot = { widthMm: 304.8, heightMm: 304.8, laydownMlPerIn2: 0.0065, loss: 0 };
    expect(inkMl({ total: 1.4, ...foot })).toBeCloseTo(1.3104, 10);
    expect(inkMl({ total: 1.4, ...foot, loss: 0.1 })).toBeCloseTo(1.44144, 10);
  });
});
