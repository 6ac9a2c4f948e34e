import type { SizeMm } from '@/lib/job/tidyLength';
import type { Blank, Position } from '@/shared/schemas/blank';
import type { Press, Printer, Sheet, Workshop } from '@/shared/schemas/workshop';
import { thresholds } from '@/shared/tables/thresholds';
import { MM_PER_INCH } from '@/shared/units';

/** Tried in this order: where most prints go. */
const preferred: readonly Position[] = ['front', 'wrap', 'face', 'back'];
/** Where nothing says how large a print may be. */
const PLAIN_MM = 200;

/** What bounds the first print of a new job; null for what the workshop does not have yet. */
interface PrintBounds {
  readonly sheet: Sheet | null;
  readonly printer: Printer | null;
  readonly press: Press | null;
  readonly policy: Workshop['policy'];
  readonly unit: Workshop['units']['length'];
}

/**
 * A place on a blank and the largest round size that fits there on every size of the blank, on the sheet with
 * room for tape, and under the platen.
 */
export function startingPrint(
  blank: Blank | null,
  { sheet, printer, press, policy, unit }: PrintBounds,
): SizeMm & { readonly position: Position } {
  const sizes = blank?.sizes ?? [];
  const named = sizes.flatMap(({ maxPrints }) => maxPrints);
  const position =
    preferred.find((place) => named.some((most) => most.position === place)) ?? named[0]?.position ?? 'front';
  const places = named.filter((most) => most.position === position);
  const { near, wide } = thresholds.fill;
  const taped = Math.max(thresholds.tape.clear.value, policy.tapeMarginMm, printer?.marginMm ?? 0);
  const edge = thresholds.platenEdge.value;
  const isAcross = position === 'front' || position === 'back';
  const widths = [
    ...places.map(({ widthMm }) => widthMm * near.value),
    ...(isAcross ? sizes.flatMap(({ widthMm }) => (widthMm === null ? [] : [widthMm * wide.value])) : []),
    ...(sheet === null ? [] : [sheet.widthMm - 2 * taped]),
    ...(press?.platen ? [press.platen.widthMm - 2 * edge] : []),
  ];
  const heights = [
    ...places.map(({ heightMm }) => heightMm * near.value),
    ...(sheet === null ? [] : [sheet.heightMm - 2 * taped]),
    ...(press?.platen ? [press.platen.heightMm - 2 * edge] : []),
  ];
  return {
    position,
    widthMm: roundDown(widths.length > 0 ? Math.min(...widths) : PLAIN_MM, unit),
    heightMm: roundDown(heights.length > 0 ? Math.min(...heights) : PLAIN_MM, unit),
  };
}

/** Down to a quarter of an inch or half a centimetre, but never to nothing. */
function roundDown(lengthMm: number, unit: Workshop['units']['length']): number {
  const step = unit === 'in' ? MM_PER_INCH / 4 : 5;
  const steps = Math.floor(lengthMm / step + 1e-6);
  return steps > 0 ? Number((steps * step).toPrecision(12)) : Math.max(1, lengthMm);
}
