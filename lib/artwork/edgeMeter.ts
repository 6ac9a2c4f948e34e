import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { thresholds } from '@/shared/tables/thresholds';

/** How many pixels the edges in a picture take to go from dark to light. */
export type EdgeReading =
  /** Too few clear edges to judge by. */
  | { readonly kind: 'unknown' }
  | {
      readonly kind: 'measured';
      /** Middle width of the edges from a tenth to nine tenths of their height, in pixels. */
      readonly widthPx: number;
      readonly edges: number;
      /** True where edges are so wide that the picture was enlarged or is out of focus (ART-03). */
      readonly isSoft: boolean;
    };

interface EdgeMeter {
  readonly add: (rows: PixelGrid) => void;
  readonly read: () => EdgeReading;
}

/**
 * A drawn edge takes about 1 px, one of a sharp photograph 1.5 to 2.5; a picture made three times as large
 * takes 3 and more. Width of edges as a measure of blur: P. Marziliano and others, "A no-reference perceptual
 * blur metric", ICIP 2002; the limit is a judgement by eye.
 */
const SOFT_FROM_PX = thresholds.picture.softEdge.value;
/** Differences in lightness, of 255: a clear edge, and a step that still belongs to one. */
const EDGE_HEIGHT = 64;
const STEP_HEIGHT = 2;
const FEWEST_EDGES = 40;
/** Of this many rows one is looked at: more rows tell nothing new. */
const ROWS_APART = 8;

/** Measures edges that lie across the rows, 8 bits a channel. */
export function edgeMeter(): EdgeMeter {
  const widths: number[] = [];
  let row = 0;
  return {
    add({ width, height, rgba }) {
      const light = new Float64Array(width);
      for (let y = 0; y < height; y += 1, row += 1) {
        if (row % ROWS_APART !== 0) continue;
        lightness(rgba, y * width * 4, light);
        addEdges(light, widths);
      }
    },
    read() {
      if (widths.length < FEWEST_EDGES) return { kind: 'unknown' };
      const sorted = Float64Array.from(widths).sort();
      const widthPx = sorted[Math.floor(sorted.length / 2)] ?? 0;
      return { kind: 'measured', widthPx, edges: widths.length, isSoft: widthPx >= SOFT_FROM_PX };
    },
  };
}

/** Luma of Rec. 709 on encoded values, laid on white: how light a pixel looks. */
function lightness(rgba: PixelGrid['rgba'], from: number, light: Float64Array): void {
  for (let x = 0, at = from; x < light.length; x += 1, at += 4) {
    const luma = 0.2126 * (rgba[at] ?? 0) + 0.7152 * (rgba[at + 1] ?? 0) + 0.0722 * (rgba[at + 2] ?? 0);
    const alpha = (rgba[at + 3] ?? 0) / 255;
    light[x] = luma * alpha + 255 * (1 - alpha);
  }
}

/** Follows each climb or fall as long as it goes on. */
function addEdges(light: Float64Array, widths: number[]): void {
  for (let from = 0; from + 1 < light.length; ) {
    const direction = Math.sign(stepAt(light, from));
    let to = from + 1;
    while (to + 1 < light.length && stepAt(light, to) * direction >= STEP_HEIGHT) to += 1;
    const height = (light[to] ?? 0) - (light[from] ?? 0);
    if (Math.abs(height) >= EDGE_HEIGHT) widths.push(middleWidth(light, from, to));
    from = to;
  }
}

const stepAt = (light: Float64Array, at: number) => (light[at + 1] ?? 0) - (light[at] ?? 0);

/** Pixels from a tenth to nine tenths of the way, between pixels in proportion. */
function middleWidth(light: Float64Array, from: number, to: number): number {
  const start = light[from] ?? 0;
  const height = (light[to] ?? 0) - start;
  const crossing = (share: number): number => {
    for (let x = from; x < to; x += 1) {
      const here = ((light[x] ?? 0) - start) / height;
      const next = ((light[x + 1] ?? 0) - start) / height;
      if (next >= share) return x + (share - here) / (next - here);
    }
    return to;
  };
  return crossing(0.9) - crossing(0.1);
}
