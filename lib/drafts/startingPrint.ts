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
  /** Places that other prints of the piece have already. */
  readonly taken?: readonly Position[];
}

/**
 * A place on a blank and the largest round size that fits there on every size of the blank, on the sheet with
 * room for tape, and under the platen; turned on sheet and platen where it is larger so.
 */
export function startingPrint(
  blank: Blank | null,
  { sheet, printer, press, policy, unit, taken = [] }: PrintBounds,
): SizeMm & { readonly position: Position } {
  const sizes = blank?.sizes ?? [];
  const named = sizes.flatMap(({ maxPrints }) => maxPrints);
  const free = named.filter((most) => !taken.includes(most.position));
  const open = free.length > 0 ? free : named;
  const position =
    preferred.find((place) => open.some((most) => most.position === place)) ?? open[0]?.position ?? 'front';
  const places = named.filter((most) => most.position === position);
  const { near, wide } = thresholds.fill;
  const isAcross = position === 'front' || position === 'back';
  const item = {
    widthMm: Math.min(
      ...places.map(({ widthMm }) => widthMm * near.value),
      ...(isAcross ? sizes.flatMap(({ widthMm }) => (widthMm === null ? [] : [widthMm * wide.value])) : []),
    ),
    heightMm: Math.min(...places.map(({ heightMm }) => heightMm * near.value)),
  };
  const edge = thresholds.platenEdge.value;
  const taped = Math.max(thresholds.tape.clear.value, policy.tapeMarginMm, printer?.marginMm ?? 0);
  const rooms = [
    ...(sheet === null ? [] : [within(sheet, taped)]),
    ...(press?.platen ? [within(press.platen, edge)] : []),
  ];
  const [most = item] = rooms
    .reduce<readonly SizeMm[]>(
      (fitted, room) => fitted.flatMap((size) => [common(size, room), common(size, turned(room))]),
      [item],
    )
    .toSorted((one, other) => area(other) - area(one));
  return {
    position,
    widthMm: roundDown(Number.isFinite(most.widthMm) ? most.widthMm : PLAIN_MM, unit),
    heightMm: roundDown(Number.isFinite(most.heightMm) ? most.heightMm : PLAIN_MM, unit),
  };
}

const within = ({ widthMm, heightMm }: SizeMm, edgeMm: number): SizeMm => ({
  widthMm: widthMm - 2 * edgeMm,
  heightMm: heightMm - 2 * edgeMm,
});
const turned = ({ widthMm, heightMm }: SizeMm): SizeMm => ({ widthMm: heightMm, heightMm: widthMm });
const common = (one: SizeMm, other: SizeMm): SizeMm => ({
  widthMm: Math.min(one.widthMm, other.widthMm),
  heightMm: Math.min(one.heightMm, other.heightMm),
});
/** What nothing bounds counts as a kilometre, so that two of them compare. */
const area = ({ widthMm, heightMm }: SizeMm): number => Math.min(widthMm, 1e6) * Math.min(heightMm, 1e6);

/** Down to a quarter of an inch or half a centimetre, but never to nothing. */
function roundDown(lengthMm: number, unit: Workshop['units']['length']): number {
  const step = unit === 'in' ? MM_PER_INCH / 4 : 5;
  const steps = Math.floor(lengthMm / step + 1e-6);
  return steps > 0 ? Number((steps * step).toPrecision(12)) : Math.max(1, lengthMm);
}
