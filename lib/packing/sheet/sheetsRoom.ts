import type { BoxKind } from '@/lib/packing/box';
import { boxKinds } from '@/lib/packing/boxKinds';
import { commonMeasure } from '@/lib/packing/commonMeasure';
import type { PieceRequest } from '@/lib/packing/pieceRequest';
import { binTicks } from '@/lib/packing/ticks';
import type { Bin } from './fillSheets';

/** A request as the searches see it, in ticks. */
interface SheetsRoom {
  /** Searched with the long side across: it makes no difference how the sheet is held. */
  readonly swapped: boolean;
  readonly bin: Bin;
  readonly kinds: readonly BoxKind[];
}

export function sheetsRoom(
  request: PieceRequest & { readonly sheetWidthMm: number; readonly sheetHeightMm: number },
): SheetsRoom {
  const { sheetWidthMm, sheetHeightMm, marginMm, gutterMm } = request;
  const swapped = sheetHeightMm > sheetWidthMm;
  const kinds = boxKinds(request, swapped);
  const unit = commonMeasure(kinds);
  const [width = 0, height = 0] = [sheetWidthMm, sheetHeightMm]
    .map((side) => Math.floor(binTicks(side, marginMm, gutterMm) / unit) * unit)
    .sort((a, b) => b - a);
  return { swapped, bin: { width, height, mayTurn: request.rotate }, kinds };
}
