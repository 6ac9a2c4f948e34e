import { analysePicture } from '@/lib/artwork/analysePicture';
import { inkMeter } from '@/lib/ink/inkMeter';
import { sourceOf } from '@/lib/picture/pictureSource';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { PIXEL_SUM, pixelSum } from '@/tests/bench/yardsticks/pixelSum';
import { type BenchRow, timeRow } from './benchRow';
import { timesBeside } from './measure';

const WIDTH = 3000;
const HEIGHT = 3600;
const RUNS = 15;
const STRIP_ROWS = 160;

/** @returns how long ink and the whole analysis of a 3000 × 3600 px picture take, decoding apart. */
export function benchArtwork(): readonly BenchRow[] {
  const photograph = pictureOf(() => 255);
  const cutOut = pictureOf((x, y) => {
    const inside = 1_300 - Math.hypot(x - WIDTH / 2, y - HEIGHT / 2);
    return inside < 0 ? 0 : Math.min(255, inside * 8);
  });
  return [
    row('ink of a photograph, 3000 × 3600 px', photograph, measured),
    row('ink of a cut-out, 3000 × 3600 px', cutOut, measured),
    row('whole analysis of a photograph, 3000 × 3600 px', photograph, analysed),
    row('whole analysis of a cut-out, 3000 × 3600 px', cutOut, analysed),
  ];
}

const row = (what: string, picture: PixelGrid, run: (picture: PixelGrid) => unknown): BenchRow =>
  timeRow(
    what,
    timesBeside(RUNS, () => picture, run, pixelSum),
    PIXEL_SUM,
  );

/** In strips, as the worker gets them. */
function measured({ width, height, rgba }: PixelGrid) {
  const meter = inkMeter();
  for (let y = 0; y < height; y += STRIP_ROWS) {
    const rows = Math.min(STRIP_ROWS, height - y);
    meter.add({ width, height: rows, rgba: rgba.subarray(y * width * 4, (y + rows) * width * 4) });
  }
  return meter.read();
}

function analysed(picture: PixelGrid) {
  const steps = analysePicture(sourceOf(picture));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Soft slopes with a grain of 16 values: no two pixels beside each other are alike. */
function pictureOf(alphaAt: (x: number, y: number) => number): PixelGrid {
  const rgba = new Uint8Array(WIDTH * HEIGHT * 4);
  let grain = 1;
  for (let y = 0, at = 0; y < HEIGHT; y += 1) {
    for (let x = 0; x < WIDTH; x += 1, at += 4) {
      grain = (Math.imul(grain, 1_103_515_245) + 12_345) >>> 0;
      rgba[at] = (x / WIDTH) * 200 + ((grain >>> 5) & 15);
      rgba[at + 1] = (y / HEIGHT) * 180 + ((grain >>> 11) & 15);
      rgba[at + 2] = 90 + ((grain >>> 17) & 15);
      rgba[at + 3] = alphaAt(x, y);
    }
  }
  return { width: WIDTH, height: HEIGHT, rgba };
}
