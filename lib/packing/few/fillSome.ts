import type { Box, LaidBox, Work } from '@/lib/packing/box';
import type { Bin } from '@/lib/packing/sheet/fillSheets';
import { OpenSheet, type PlaceRule } from '@/lib/packing/sheet/openSheet';

/** A box told apart from others of its kind. */
export interface NumberedBox extends Box {
  readonly index: number;
}

export interface FilledSheet {
  readonly laid: readonly LaidBox[];
  readonly boxes: readonly NumberedBox[];
  /** Area covered, square ticks. */
  readonly used: number;
}

/**
 * Lays boxes in the given order, each on the first of a few sheets that has a place.
 *
 * @returns the sheets, and the boxes that found no place
 */
export function fillSome(
  boxes: readonly NumberedBox[],
  count: number,
  bin: Bin,
  rule: PlaceRule,
  work: Work,
): { readonly sheets: readonly FilledSheet[]; readonly left: readonly NumberedBox[] } {
  const sheets = Array.from({ length: count }, () => {
    const filled: NumberedBox[] = [];
    return { open: new OpenSheet(bin.width, bin.height), filled };
  });
  const area = bin.width * bin.height;
  const left = boxes.filter((box) => {
    for (const { open, filled } of sheets) {
      if (open.used + box.width * box.height > area) continue;
      const place = open.find(box, bin.mayTurn, rule, work);
      if (place === null) continue;
      open.lay(box.kind, place, work);
      filled.push(box);
      return false;
    }
    return true;
  });
  return {
    sheets: sheets.map(({ open, filled }) => ({ laid: open.laid, boxes: filled, used: open.used })),
    left,
  };
}
