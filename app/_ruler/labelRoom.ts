import { placeLabels } from './placeLabels';
import { type RulerBounds, type RulerMark, ratioOnRuler } from './rulerMark';

/** Mean advance of the faces at their sizes here, in px, rounded up so that labels never touch. */
const figurePx = 8.4;
const letterPx = 6.1;
const gapPx = 12;

/** How the marks are told under the bar, by the room there is. */
type LabelRoom =
  /** Figure over name under each tick. */
  | { readonly kind: 'named'; readonly middles: readonly number[] }
  /** Figures in equal cells, and the name of the one that is touched in a line beneath. */
  | { readonly kind: 'figures' }
  /** One below the other. */
  | { readonly kind: 'list' };

interface Room {
  readonly bounds: RulerBounds;
  readonly format: (value: number) => string;
  readonly widthPx: number;
  /** How much larger than usual the type is. */
  readonly scale: number;
}

/** @param marks in the order of their values */
export function labelRoom(marks: readonly RulerMark[], { bounds, format, widthPx, scale }: Room): LabelRoom {
  const figures = marks.map(({ value }) => format(value).length * figurePx * scale);
  const named = marks.map(({ label, value }, at) => ({
    ratio: ratioOnRuler(value, bounds),
    widthPx: Math.max(figures[at] ?? 0, label.length * letterPx * scale) + gapPx * scale,
  }));
  const middles = placeLabels(named, widthPx);
  if (middles !== null) return { kind: 'named', middles };
  const cellPx = widthPx / Math.max(1, marks.length);
  return { kind: figures.every((px) => px + gapPx / 2 <= cellPx) ? 'figures' : 'list' };
}
