import { encodeSrgb } from '@/lib/picture/srgb';

/** Linear light of sRGB from CIE XYZ with the white of the screen: IEC 61966-2-1. */
const FROM_XYZ = [
  [3.2406, -1.5372, -0.4986],
  [-0.9689, 1.8758, 0.0415],
  [0.0557, -0.204, 1.057],
] as const;
/** White of D65 for two degrees: CIE 15. */
const WHITE = [0.95047, 1, 1.08883] as const;

/**
 * The colour of a cloth on the screen, with the screen's white for its lightest: what a maker compares is the
 * print beside the cloth, both in the same light.
 *
 * @param colour CIE L*a*b*
 * @returns encoded sRGB, 0–255 and not rounded; colours no screen shows go to the nearest edge of each channel
 */
export function clothRgb(colour: { readonly L: number; readonly a: number; readonly b: number }): Rgb {
  const y = (colour.L + 16) / 116;
  const xyz = [y + colour.a / 500, y, y - colour.b / 200].map(
    (value, index) => (WHITE[index] ?? 1) * unlab(value),
  );
  const [red, green, blue] = FROM_XYZ.map((row) => {
    const linear = row.reduce((sum, factor, index) => sum + factor * (xyz[index] ?? 0), 0);
    return 255 * encodeSrgb(Math.min(1, Math.max(0, linear)));
  });
  return [red ?? 0, green ?? 0, blue ?? 0];
}

export type Rgb = readonly [red: number, green: number, blue: number];

/** The cube, and its straight piece near black: ISO/CIE 11664-4. */
const unlab = (value: number) => (value > 6 / 29 ? value ** 3 : 3 * (6 / 29) ** 2 * (value - 4 / 29));
