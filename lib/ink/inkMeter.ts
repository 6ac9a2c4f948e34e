import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { FLOOD_STEPS } from '@/shared/schemas/picture';
import type { Halftone } from './dotArea';
import type { ChannelShares } from './generateBlack';
import { defaultInkModel } from './inkModel';
import { type InkTable, inkTable } from './inkTables';

/** Ink of a picture over its own box, all grey with black. Shares 0–1; see-through parts count as bare paper. */
export interface InkReading {
  readonly coverage: ChannelShares;
  /** Share of pixels whose channels add to more than `HEAVY_TOTAL`. */
  readonly heavyShare: number;
  /** Share of pixels above `FLOOD_TOTAL`, where black prints each of `FLOOD_STEPS` of the grey. */
  readonly floodShares: readonly number[];
  /** Share of pixels with a tint that is seen on cloth but hardly on a screen. */
  readonly paleShare: number;
  readonly pixels: number;
}

interface InkMeter {
  /** Counts some rows of the picture. */
  readonly add: (rows: PixelGrid) => void;
  readonly read: () => InkReading;
}

/** Channel sum above which a pixel is heavy; with all grey in black it can reach 2. */
const HEAVY_TOTAL = 1.8;
/** Channel sum above which no paper holds a pixel, however much of the grey is printed with black. */
const FLOOD_TOTAL = 2.5;
/** Channel sums from a just visible tint to a pale one; packing a JPEG alone leaves up to 0.02 on white. */
const PALE_TOTAL = { above: 0.02, most: 0.08 } as const;
/** Sums of equal inks may miss the limit by the last digit. */
const SLACK = 1e-9;
const FLOOD_LIMIT = FLOOD_TOTAL + SLACK;
const HEAVY_LIMIT = HEAVY_TOTAL + SLACK;
const PALE_LIMIT = PALE_TOTAL.most + SLACK;

/**
 * Measures ink row by row: each pixel laid on white paper, each channel by `model`, the grey of three inks
 * moved to black, averaged over the box.
 */
export function inkMeter(model: Halftone = defaultInkModel): InkMeter {
  // Cyan, magenta, yellow, their common grey, heavy pixels, pale pixels, all pixels.
  const tally = new Float64Array(7);
  const floods = new Float64Array(FLOOD_STEPS.length);
  return {
    add({ width, height, rgba }) {
      const table = inkTable(rgba instanceof Uint16Array ? 65_535 : 255, model);
      // A row a call: engines make a function fast by how often it is called, and one picture is few strips.
      for (let row = 0; row < height; row += 1) {
        const pixels = rgba.subarray(row * width * 4, (row + 1) * width * 4);
        if (countSolid(pixels, table, tally, floods) > 0) countSoft(pixels, table, tally, floods);
      }
    },
    read() {
      const [cyan = 0, magenta = 0, yellow = 0, grey = 0, heavy = 0, pale = 0, pixels = 0] = tally;
      const mean = (sum: number) => (pixels === 0 ? 0 : Math.min(1, Math.max(0, sum / pixels)));
      return {
        coverage: {
          cyan: mean(cyan - grey),
          magenta: mean(magenta - grey),
          yellow: mean(yellow - grey),
          black: mean(grey),
        },
        heavyShare: mean(heavy),
        floodShares: Array.from(floods, mean),
        paleShare: mean(pale),
        pixels,
      };
    },
  };
}

/*
 * Two plain loops over whole numbers, one for pixels nothing shows through and one for the rest. They run ten
 * million times and more, so they make no objects, and neither spoils the other's speed.
 */

/** @returns how many pixels are partly see-through and left for `countSoft`. */
function countSolid(
  rgba: PixelGrid['rgba'],
  { most, solid }: InkTable,
  tally: Float64Array,
  floods: Float64Array,
): number {
  let cyanSum = 0;
  let magentaSum = 0;
  let yellowSum = 0;
  let greySum = 0;
  let heavy = 0;
  let pale = 0;
  let left = 0;
  for (let at = 0; at < rgba.length; at += 4) {
    const alpha = rgba[at + 3] ?? 0;
    if (alpha !== most) {
      if (alpha > 0) left += 1;
      continue;
    }
    const red = rgba[at] ?? 0;
    const green = rgba[at + 1] ?? 0;
    const blue = rgba[at + 2] ?? 0;
    const cyan = solid[red] ?? 0;
    const magenta = solid[green] ?? 0;
    const yellow = solid[blue] ?? 0;
    // The lightest of the three has the least ink: what all of them share.
    const grey = solid[Math.max(red, green, blue)] ?? 0;
    cyanSum += cyan;
    magentaSum += magenta;
    yellowSum += yellow;
    greySum += grey;
    const three = cyan + magenta + yellow;
    if (three > FLOOD_LIMIT) countFlood(three, grey, floods);
    const total = three - 2 * grey;
    if (total > HEAVY_LIMIT) heavy += 1;
    else if (total > PALE_TOTAL.above && total <= PALE_LIMIT) pale += 1;
  }
  add(tally, [cyanSum, magentaSum, yellowSum, greySum, heavy, pale, rgba.length / 4]);
  return left;
}

/** Pixels that are partly see-through, laid on white first. */
function countSoft(
  rgba: PixelGrid['rgba'],
  table: InkTable,
  tally: Float64Array,
  floods: Float64Array,
): void {
  const { most, blendStep } = table;
  const ink = table.blended();
  let cyanSum = 0;
  let magentaSum = 0;
  let yellowSum = 0;
  let greySum = 0;
  let heavy = 0;
  let pale = 0;
  for (let at = 0; at < rgba.length; at += 4) {
    const alpha = rgba[at + 3] ?? 0;
    if (alpha === 0 || alpha === most) continue;
    const white = most * (most - alpha);
    const cyan = ink[(((rgba[at] ?? 0) * alpha + white) / blendStep + 0.5) | 0] ?? 0;
    const magenta = ink[(((rgba[at + 1] ?? 0) * alpha + white) / blendStep + 0.5) | 0] ?? 0;
    const yellow = ink[(((rgba[at + 2] ?? 0) * alpha + white) / blendStep + 0.5) | 0] ?? 0;
    const grey = Math.min(cyan, magenta, yellow);
    cyanSum += cyan;
    magentaSum += magenta;
    yellowSum += yellow;
    greySum += grey;
    const three = cyan + magenta + yellow;
    if (three > FLOOD_LIMIT) countFlood(three, grey, floods);
    const total = three - 2 * grey;
    if (total > HEAVY_LIMIT) heavy += 1;
    else if (total > PALE_TOTAL.above && total <= PALE_LIMIT) pale += 1;
  }
  add(tally, [cyanSum, magentaSum, yellowSum, greySum, heavy, pale]);
}

/** Grey printed with black by a share takes twice that of it away. */
function countFlood(three: number, grey: number, floods: Float64Array): void {
  for (let step = 0; step < FLOOD_STEPS.length; step += 1) {
    if (three - 2 * (FLOOD_STEPS[step] ?? 0) * grey <= FLOOD_LIMIT) return;
    floods[step] = (floods[step] ?? 0) + 1;
  }
}

function add(tally: Float64Array, amounts: readonly number[]): void {
  for (let place = 0; place < amounts.length; place += 1) {
    tally[place] = (tally[place] ?? 0) + (amounts[place] ?? 0);
  }
}
