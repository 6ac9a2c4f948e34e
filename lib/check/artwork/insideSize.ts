import type { SizeMm } from '@/lib/job/tidyLength';
import { tidyLength } from '@/lib/job/tidyLength';
import type { Workshop } from '@/shared/schemas/workshop';

/** More of the shape than this must not be lost to rounding a proposed size. */
const SHAPE_KEPT = 0.005;

/**
 * The largest print of a picture's own shape inside a box, rounded down to what a maker would type where the
 * shape bears it.
 *
 * @param shape width ÷ height, above 0
 */
export function insideSize(shape: number, box: SizeMm, unit: Workshop['units']['length']): SizeMm {
  const exact: SizeMm =
    shape > box.widthMm / box.heightMm
      ? { widthMm: box.widthMm, heightMm: box.widthMm / shape }
      : { widthMm: box.heightMm * shape, heightMm: box.heightMm };
  const tidy: SizeMm = {
    widthMm: tidyLength(exact.widthMm, unit),
    heightMm: tidyLength(exact.heightMm, unit),
  };
  const kept = tidy.widthMm / tidy.heightMm / shape;
  return Math.abs(kept - 1) <= SHAPE_KEPT ? tidy : exact;
}
