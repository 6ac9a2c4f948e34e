import type { PlacementPlace, PrintPlace } from '@/lib/job/places';
import type { SizeMm } from '@/lib/job/tidyLength';
import { scaledSize } from '@/lib/job/tidyLength';
import type { Fix } from '@/shared/finding';
import type { Workshop } from '@/shared/schemas/workshop';

/** Nobody presses a print smaller than this; a button that proposes it would be no help. */
const SMALLEST_PRINT_MM = 10;

/**
 * The button that makes a print smaller and keeps its shape.
 *
 * @param factor above 0, below 1
 * @returns null where too little would be left
 */
export function shrinkFix(
  place: PlacementPlace,
  { print, printIndex }: PrintPlace,
  factor: number,
  unit: Workshop['units']['length'],
): Fix | null {
  return resizeFix(place, printIndex, scaledSize(print, factor, unit));
}

/** @returns the button that gives a print another size; null where that is too small to press. */
export function resizeFix(place: PlacementPlace, printIndex: number, size: SizeMm): Fix | null {
  if (!(Math.min(size.widthMm, size.heightMm) >= SMALLEST_PRINT_MM)) return null;
  return {
    label: 'resizePrint',
    facts: { widthMm: size.widthMm, heightMm: size.heightMm },
    changes: [
      place.change(['prints', printIndex, 'widthMm'], size.widthMm),
      place.change(['prints', printIndex, 'heightMm'], size.heightMm),
    ],
  };
}
