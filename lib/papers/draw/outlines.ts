import type { Drawing, DrawnPrint } from '@/lib/papers/paper';

/*
 * Pieces as plain lines, of our own drawing. Lengths in mm; x from the middle, y down from the top. A shirt is one of the
 * middle sizes, 490 mm across the chest; where prints would not find room on it, it is drawn larger.
 */

interface Outline {
  /** As SVG writes paths; the first is the thick one. */
  readonly paths: readonly string[];
  readonly halfWidthMm: number;
  readonly heightMm: number;
  /** Where the collar ends at the middle. */
  readonly collarMm: number;
  /** Room between its sides. */
  readonly bodyMm: number;
}

const SIDES = 'L-226 42L-338 232L-262 268L-245 208L-245 700L245 700L245 208L262 268L338 232L226 42L88 0';

const shirts: Readonly<Record<'front' | 'back', Outline>> = {
  front: {
    paths: [`M-88 0${SIDES}Q0 140 -88 0Z`, 'M-104 6Q0 178 104 6'],
    halfWidthMm: 338,
    heightMm: 700,
    collarMm: 90,
    bodyMm: 490,
  },
  back: {
    paths: [`M-88 0${SIDES}Q0 44 -88 0Z`, 'M-104 6Q0 78 104 6'],
    halfWidthMm: 338,
    heightMm: 700,
    collarMm: 40,
    bodyMm: 490,
  },
};

/** 82 mm across and 95 mm high, as most mugs are; its handle at one side. */
const mug = 'M-41 0L-41 88Q-41 95 -34 95L34 95Q41 95 41 88L41 0Z';
const handle = 'M41 18Q74 18 74 47Q74 76 41 76M41 28Q63 28 63 47Q63 66 41 66';

/** A print in its place: its middle and its top. */
export interface PlacedPrint {
  readonly print: DrawnPrint;
  readonly xMm: number;
  readonly yMm: number;
}

export interface PlacedDrawing {
  readonly paths: readonly string[];
  /** How many times as large as they are written the paths are drawn. */
  readonly grown: number;
  readonly halfWidthMm: number;
  /** Between the sides of a shirt, without its sleeves; of anything else, all of it. */
  readonly bodyMm: number;
  readonly heightMm: number;
  readonly prints: readonly PlacedPrint[];
}

/** From the middle of a shirt to that of what is printed beside it. */
const BESIDE = { middle: 0, leftChest: 110, rightChest: -110, leftSleeve: 282, rightSleeve: -282 } as const;
/** Across a sleeve. */
const SLEEVE_MM = 110;
/** Below the collar where nobody said. */
const USUAL_DROP = 75;

/** @returns where everything of a drawing lies. */
export function placeDrawing({ shape, prints }: Drawing): PlacedDrawing {
  const widest = Math.max(1, ...prints.map(({ widthMm }) => widthMm));
  const tallest = Math.max(1, ...prints.map(({ heightMm }) => heightMm));
  switch (shape) {
    case 'front':
    case 'back':
      return onShirt(shirts[shape], prints);
    case 'mug': {
      // The wrap lies flat beside the mug, for on it most would be out of sight.
      const grown = Math.max(1, tallest / 90);
      const all = 82 * grown + 50 * grown + widest;
      const middle = -all / 2 + 41 * grown;
      return {
        paths: [moved(mug, middle / grown), moved(handle, middle / grown)],
        grown,
        halfWidthMm: all / 2,
        bodyMm: all,
        heightMm: 95 * grown,
        prints: prints.map((print) => ({
          print,
          xMm: all / 2 - widest / 2,
          yMm: (95 * grown - print.heightMm) / 2,
        })),
      };
    }
    case 'panel': {
      const edge = 0.01 * Math.max(widest, tallest);
      const [half, high] = [widest / 2 + edge, tallest + 2 * edge];
      return {
        paths: [`M${-half} 0L${half} 0L${half} ${high}L${-half} ${high}Z`],
        grown: 1,
        halfWidthMm: half,
        bodyMm: 2 * half,
        heightMm: high,
        prints: prints.map((print) => ({ print, xMm: 0, yMm: edge })),
      };
    }
    case 'other':
      return {
        paths: [],
        grown: 1,
        halfWidthMm: widest / 2,
        bodyMm: widest,
        heightMm: tallest,
        prints: prints.map((print) => ({ print, xMm: 0, yMm: 0 })),
      };
    default:
      return shape satisfies never;
  }
}

function onShirt(
  { paths, halfWidthMm, heightMm, collarMm, bodyMm }: Outline,
  prints: readonly DrawnPrint[],
): PlacedDrawing {
  const placed = prints.map((print) => ({
    print,
    xMm: BESIDE[print.position],
    dropMm: Math.max(-collarMm, print.dropMm ?? (print.position.endsWith('Sleeve') ? 30 : USUAL_DROP)),
  }));
  const grown = Math.max(
    1,
    ...placed.flatMap(({ print, xMm, dropMm }) => [
      print.position.endsWith('Sleeve')
        ? print.widthMm / SLEEVE_MM
        : print.widthMm / (0.94 * (bodyMm - 2 * Math.abs(xMm))),
      (dropMm + print.heightMm) / (0.96 * (heightMm - collarMm)),
    ]),
  );
  return {
    paths,
    grown,
    halfWidthMm: halfWidthMm * grown,
    bodyMm: bodyMm * grown,
    heightMm: heightMm * grown,
    prints: placed.map(({ print, xMm, dropMm }) => ({
      print,
      xMm: xMm * grown,
      yMm: collarMm * grown + dropMm,
    })),
  };
}

/** A path further to the right: every number before a space or a turn of the pen is across, the next down. */
const moved = (path: string, across: number): string =>
  path.replaceAll(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) => `${Number(x) + across} ${y}`);
