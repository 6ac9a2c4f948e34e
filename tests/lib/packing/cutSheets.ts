import { seededRandom } from '@/lib/packing/seededRandom';
import type { SheetsRequest } from '@/lib/packing/sheet/packSheets';

/** Sheets that pieces were cut from. */
export interface CutSheets {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly sheets: number;
  /** Pieces cut from each sheet, from and to. */
  readonly pieces: readonly [number, number];
  /** Share of each sheet that its pieces fill: they are scaled down by as much, to tenths of a millimetre. */
  readonly fill?: number;
  /** Each side shrinks by a share of its own between nothing and twice that of `fill`. */
  readonly uneven?: boolean;
}

/** Nothing shorter is cut off, millimetres. */
const SHORTEST = 5;

/**
 * Cuts sheets from edge to edge, at whole millimetres, largest piece first more often than not, and turns and mixes
 * the pieces: they fit the same number of sheets again.
 */
export function cutSheets({ widthMm, heightMm, ...cut }: CutSheets, seed: number): SheetsRequest {
  const random = seededRandom(seed);
  const sides = Array.from({ length: cut.sheets }, () => {
    const [least, most] = cut.pieces;
    const wanted = least + Math.floor(random() * (most - least + 1));
    let pieces: readonly (readonly [number, number])[] = [[widthMm, heightMm]];
    for (let tries = 0; pieces.length < wanted && tries < 1_000; tries += 1) pieces = cutOne(pieces, random);
    return pieces;
  }).flat();
  const shrink = 1 - Math.sqrt(cut.fill ?? 1);
  const scaled = (side: number) => {
    const share = cut.uneven === true ? 2 * shrink * random() : shrink;
    return Math.floor(side * (1 - share) * 10 + 1e-9) / 10;
  };
  const pieces = sides
    .map(([wide, high]) => ({ wide: scaled(wide), high: scaled(high), turn: random() < 0.5, key: random() }))
    .sort((a, b) => a.key - b.key)
    .map(({ wide, high, turn }, index) => ({
      id: `piece ${index + 1}`,
      widthMm: turn ? high : wide,
      heightMm: turn ? wide : high,
      count: 1,
    }));
  return { sheetWidthMm: widthMm, sheetHeightMm: heightMm, marginMm: 0, gutterMm: 0, rotate: true, pieces };
}

function cutOne(
  pieces: readonly (readonly [number, number])[],
  random: () => number,
): readonly (readonly [number, number])[] {
  const largestFirst = pieces.toSorted((a, b) => b[0] * b[1] - a[0] * a[1]);
  const place = random() < 0.7 ? 0 : Math.floor(random() * pieces.length);
  const [wide, high] = largestFirst[place] ?? [0, 0];
  const across = random() < wide / (wide + high);
  const side = across ? wide : high;
  const length = Math.round(side * (0.2 + 0.6 * random()));
  if (length < SHORTEST || side - length < SHORTEST) return pieces;
  const parts: readonly (readonly [number, number])[] = across
    ? [
        [length, high],
        [wide - length, high],
      ]
    : [
        [wide, length],
        [wide, high - length],
      ];
  return [...largestFirst.filter((_, index) => index !== place), ...parts];
}
