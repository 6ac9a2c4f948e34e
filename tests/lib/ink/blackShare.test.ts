import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generateBlack, totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import { floodShareOf, heavyShareOf } from '@/lib/ink/heavyShareOf';
import { inkMl } from '@/lib/ink/inkMl';
import { measureInk } from '@/lib/ink/measureInk';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { black, gridOf, type Pixel } from '@/tests/fixtures/pictures/gridOf';
import { darkGround, sixPictures } from '@/tests/fixtures/pictures/sixPictures';
import { cases } from '@/tests/tools/cases';

const SHARES = [0, 0.5, 1] as const;
const foot = { widthMm: 304.8, heightMm: 304.8, laydownMlPerIn2: 0.0065, loss: 0 };
const totals = (grid: PixelGrid): readonly number[] =>
  SHARES.map((share) => totalShare(withBlackShare(measureInk(grid).coverage, share)));

/*
 * Black generation of ISO 32000-1, 10.3.4, with BG(k) = UCR(k) = s·k: total = c + m + y − 2·s·min(c, m, y). A grey of
 * 188/255 has light 0.502886, ink 1 − √0.502886 = 0.290855; half of full grey, 128/255, has light 0.215861 and ink
 * 1 − √0.215861 = 0.535392. Millilitres a square foot: 144 in² × 0.0065 mL = 0.936 for each 100 %.
 */
describe('ink of six pictures where black prints none, half and all of the grey', () => {
  it.each([
    ['solid red', [2, 2, 2]],
    ['solid black', [3, 2, 1]],
    ['50 % grey', [3 * 0.535392, 2 * 0.535392, 0.535392]],
  ] as const)('%s, by hand', (name, expected) => {
    for (const [at, total] of totals(sixPictures[name]).entries()) {
      expect(total).toBeCloseTo(expected[at] ?? -1, 6);
      expect(inkMl({ total, ...foot })).toBeCloseTo(0.936 * (expected[at] ?? -1), 5);
    }
  });

  // The model value by value, as the sums of the formula above; no figure of the meter's own.
  it.each(Object.keys(sixPictures) as (keyof typeof sixPictures)[])('%s, pixel by pixel', (name) => {
    const { rgba, width, height } = sixPictures[name];
    const ink = (value = 0) => {
      const u = value / 255;
      return 1 - Math.sqrt(u <= 0.04045 ? u / 12.92 : ((u + 0.055) / 1.055) ** 2.4);
    };
    for (const [at, share] of SHARES.entries()) {
      let sum = 0;
      for (let from = 0; from < rgba.length; from += 4) {
        const [c, m, y] = [ink(rgba[from]), ink(rgba[from + 1]), ink(rgba[from + 2])];
        sum += c + m + y - 2 * share * Math.min(c, m, y);
      }
      expect(totals(sixPictures[name])[at]).toBeCloseTo(sum / (width * height), 9);
    }
  });

  it('puts dark above red again: solid black takes as much as solid red at a half', () => {
    expect(totals(sixPictures['solid black'])[1]).toBeCloseTo(totals(sixPictures['solid red'])[1] ?? -1, 12);
  });

  it('brings a full dark ground to the 180 to 260 % that are typical of it, which whole replacement missed', () => {
    // Typical coverage of a full dark background, common practice from memory: 1.8 to 2.6.
    const [, half = 0, whole = 9] = totals(darkGround);
    expect(half).toBeGreaterThan(1.8);
    expect(half).toBeLessThan(2.6);
    expect(whole).toBeLessThan(1.3);
  });
});

describe('black generation', () => {
  it('by a share moves that much of the grey', () => {
    // ISO 32000-1, 10.3.4: k = min(0.8, 0.5, 0.4) = 0.4; half of it is 0.2.
    const inks = generateBlack(0.8, 0.5, 0.4, 0.5);
    for (const [channel, expected] of Object.entries({ cyan: 0.6, magenta: 0.3, yellow: 0.2, black: 0.2 })) {
      expect(inks[channel as keyof typeof inks]).toBeCloseTo(expected, 12);
    }
  });

  it('of means is the mean of the pixels’ own, for every share', () => {
    const value = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(value, value, value), { minLength: 1, maxLength: 20 }),
        value,
        (inks, s) => {
          const mean = (share: number) => {
            const each = inks.map(([c, m, y]) => generateBlack(c, m, y, share));
            const of = (pick: (one: (typeof each)[number]) => number) =>
              each.reduce((sum, one) => sum + pick(one), 0) / each.length;
            return {
              cyan: of(({ cyan }) => cyan),
              magenta: of(({ magenta }) => magenta),
              yellow: of(({ yellow }) => yellow),
              black: of((one) => one.black),
            };
          };
          const [direct, from] = [mean(s), withBlackShare(mean(1), s)];
          for (const channel of ['cyan', 'magenta', 'yellow', 'black'] as const) {
            expect(from[channel]).toBeCloseTo(direct[channel], 12);
          }
        },
      ),
      cases(300),
    );
  });

  it('of all the grey leaves what was measured as it was, to the last digit', () => {
    const { coverage } = measureInk(sixPictures['dark gradient']);
    expect(withBlackShare(coverage, 1)).toEqual(coverage);
  });
});

describe('pixels that flood the paper', () => {
  const of = (pixels: readonly Pixel[], blackShare: number) => {
    const { heavyShare, floodShares } = measureInk(gridOf(pixels.length, 1, (x) => pixels[x] ?? black));
    const grey = { across: [], down: [], floodShares: [...floodShares] };
    return [floodShareOf({ grey }, blackShare), heavyShareOf({ heavyShare, grey }, blackShare)];
  };

  it('are counted above 250 %, by the share of black', () => {
    // Black: 300 % less 200 % × share, so 250 % at a quarter and 260 % at a fifth.
    const two: readonly Pixel[] = [black, [255, 255, 255, 255]];
    expect(of(two, 0)).toEqual([0.5, 0.5]);
    expect(of(two, 0.2)).toEqual([0.5, 0.5]);
    expect(of(two, 0.25)).toEqual([0, 0]);
    expect(of(two, 1)).toEqual([0, 0]);
  });

  it('by hand: two inks in full and 64/255, ink 0.773572, flood up to 273.5 − 154.7 × share = 250', () => {
    // (2.773572 − 2.5) ÷ (2 × 0.773572) = 0.1768: above 250 % at 0.15, below at 0.2.
    const dark: readonly Pixel[] = [[0, 0, 64, 255]];
    expect(of(dark, 0.15)[0]).toBe(1);
    expect(of(dark, 0.2)[0]).toBe(0);
  });

  it('are never heavy with colour too, and see-through ones are laid on white first', () => {
    expect(of([[255, 0, 0, 255]], 0)).toEqual([0, 1]);
    expect(of([[0, 0, 0, 0]], 0)).toEqual([0, 0]);
    // Three quarters of black on white: 64/255, three times 77 %.
    expect(of([[0, 0, 0, 191]], 0)[0]).toBe(0);
    expect(of([[0, 0, 0, 250]], 0)[0]).toBe(1);
  });

  it('are none where nobody counted them', () => {
    expect(heavyShareOf({ heavyShare: 0.2, grey: null }, 0)).toBe(0.2);
  });
});
