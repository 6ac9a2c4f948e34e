// @vitest-environment node
import sharp from 'sharp';
import { describe, expect, it, test } from 'vitest';
import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import { measureInk } from '@/lib/ink/measureInk';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { black, gridOf, white } from '@/tests/fixtures/pictures/gridOf';
import { scenes } from '@/tests/fixtures/pictures/scenes';

/*
 * Ink of pictures against a colour-managed conversion: libvips with its built-in CMYK profile. A profile knows
 * one press: its real inks, how dots grow on it, and how it makes black. The model here knows none of that, so
 * its level is a scale, which the maker's refills set. What is compared:
 *
 * - With all grey in black the model gives 12 to 52 % less, dark pictures furthest: the profile keeps colour inks under
 *   its black, most of all in shadows: full black alone takes 172 %.
 * - With half of it in black, as is typical, none is more than a tenth below, and none is lower for being dark. Neutral
 *   greys go far above: this profile prints them with black alone (128/255 with 59 % of it).
 * - With black counted as the three inks it stands for, the two are 4 % above to 32 % below each other.
 *
 * A share of a picture's ink that is 50 % off moves the full cost of a shirt by under 1 %.
 */
interface Reported {
  readonly full: number;
  readonly half: number;
  readonly profile: number;
}

const reported: Readonly<Record<string, Reported>> = {
  'a sky over a field': { full: 0.688, half: 0.928, profile: 0.928 },
  'a face in warm light': { full: 0.829, half: 1.419, profile: 1.479 },
  'a street at night': { full: 0.886, half: 1.687, profile: 1.847 },
  'flowers in full colour': { full: 1.097, half: 1.307, profile: 1.363 },
  'grey stones in flat light': { full: 0.501, half: 0.961, profile: 0.567 },
};

/** Mean of each ink, 0–1. */
async function converted({ width, height, rgba }: PixelGrid): Promise<readonly number[]> {
  const { data } = await sharp(rgba, { raw: { width, height, channels: 4 } })
    .removeAlpha()
    .toColourspace('cmyk')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const sums = [0, 0, 0, 0];
  for (const [at, number] of data.entries()) sums[at % 4] = (sums[at % 4] ?? 0) + number / 255;
  return sums.map((sum) => sum / (width * height));
}
const total = (inks: readonly number[]) => inks.reduce((sum, share) => sum + share, 0);

describe('ink of five pictures against a colour-managed conversion', () => {
  test.each(Object.entries(scenes))('%s', async (name, scene) => {
    const inks = await converted(scene);
    const { coverage } = measureInk(scene);
    const model = totalShare(coverage);
    const half = totalShare(withBlackShare(coverage, 0.5));
    const profile = total(inks);
    expect(model).toBeCloseTo(reported[name]?.full ?? 0, 2);
    expect(half).toBeCloseTo(reported[name]?.half ?? 0, 2);
    expect(profile).toBeCloseTo(reported[name]?.profile ?? 0, 2);
    const ratio = model / profile;
    expect(ratio).toBeGreaterThan(0.45);
    expect(ratio).toBeLessThan(0.9);
    expect(half / profile).toBeGreaterThan(0.9);
    // The profile prints neutral greys with black alone.
    expect(half / profile).toBeLessThan(name === 'grey stones in flat light' ? 1.75 : 1.05);
    const inThreeInks = (model + 2 * coverage.black) / (profile + 2 * (inks[3] ?? 0));
    expect(inThreeInks).toBeGreaterThan(0.65);
    expect(inThreeInks).toBeLessThan(1.05);
  });

  it('both give white no ink and black all of black', async () => {
    for (const pixel of [white, black]) {
      const scene = gridOf(4, 4, () => pixel);
      const inks = await converted(scene);
      expect(inks[3]).toBeCloseTo(measureInk(scene).coverage.black, 2);
      if (pixel === white) expect(total(inks)).toBe(0);
    }
  });
});
