import { measureInk } from '@/lib/ink/measureInk';
import { inEightBits } from '@/lib/picture/inEightBits';
import type { PictureSource } from '@/lib/picture/pictureSource';
import type { PixelBox, PixelGrid } from '@/lib/picture/pixelGrid';

/** Whether the picture stands on a solid rectangle of one colour, which would print as a box. */
export type BackgroundBox =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'box';
      /** Red, green and blue, 0–255. */
      readonly rgb: readonly [number, number, number];
      /** Ink of that colour, 0–2; at most `BARE_TOTAL` it prints nothing and comes out as bare cloth. */
      readonly ink: number;
      readonly prints: boolean;
    };

/** Channel sum up to which a ground counts as bare paper. */
const BARE_TOTAL = 0.02;

/** How far in the frame is looked at: a scaled rectangle fades over its outermost pixels. */
const INSET_SHARE = 0.01;
/** Share of the frame that must have the one colour, and how far, of 255, a channel may stray: JPEG noise. */
const FRAME_SHARE = 0.98;
const COLOUR_SLACK = 12;
const SOLID_ALPHA = 250;

/**
 * Looks along a frame one pixel wide just inside the content for one solid colour.
 *
 * @param content the box of what is not fully clear
 */
export function backgroundBox(source: PictureSource, content: PixelBox): BackgroundBox {
  const pixels = framePixels(source, content);
  const solid = pixels.filter(([, , , alpha]) => alpha >= SOLID_ALPHA);
  if (solid.length < FRAME_SHARE * pixels.length) return { kind: 'none' };
  const middle = (channel: 0 | 1 | 2) =>
    solid.map((pixel) => pixel[channel]).sort((a, b) => a - b)[Math.floor(solid.length / 2)] ?? 0;
  const rgb = [middle(0), middle(1), middle(2)] as const;
  const alike = solid.filter(([red, green, blue]) =>
    [red - rgb[0], green - rgb[1], blue - rgb[2]].every((off) => Math.abs(off) <= COLOUR_SLACK),
  );
  if (alike.length < FRAME_SHARE * pixels.length) return { kind: 'none' };
  const { cyan, magenta, yellow, black } = measureInk({
    width: 1,
    height: 1,
    rgba: new Uint8Array([...rgb, 255]),
  }).coverage;
  const ink = cyan + magenta + yellow + black;
  return { kind: 'box', rgb, ink, prints: ink > BARE_TOTAL };
}

type Pixel = readonly [red: number, green: number, blue: number, alpha: number];

function framePixels(source: PictureSource, { x, y, width, height }: PixelBox): readonly Pixel[] {
  const inset = Math.floor(Math.min(width, height) * INSET_SHARE);
  const frame = { x: x + inset, y: y + inset, width: width - 2 * inset, height: height - 2 * inset };
  const sides: readonly PixelBox[] = [
    { ...frame, height: 1 },
    { ...frame, y: frame.y + frame.height - 1, height: 1 },
    { ...frame, width: 1 },
    { ...frame, x: frame.x + frame.width - 1, width: 1 },
  ];
  return sides.flatMap((side) => pixelsOf(inEightBits(source.read(side))));
}

const pixelsOf = ({ rgba }: PixelGrid): readonly Pixel[] =>
  Array.from({ length: rgba.length / 4 }, (_, index) => {
    const at = index * 4;
    return [rgba[at] ?? 0, rgba[at + 1] ?? 0, rgba[at + 2] ?? 0, rgba[at + 3] ?? 0];
  });
