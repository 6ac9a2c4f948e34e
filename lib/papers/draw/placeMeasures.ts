import type { Drawing } from '@/lib/papers/paper';
import type { PlacedDrawing } from './outlines';

/** Size of what is written into a drawing. */
export const LABEL = 8;
/** Room of a measure with its figure beneath a print. */
export const MEASURE = 20;
/** Between the figure of a measure and a line of the piece. */
const CLEAR = 4;

/** A line as wide as its print, its figure beneath. Points; across from the middle of a drawing, down from its top. */
export interface Measure {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly box: Taken;
}

interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly low: number;
}

/**
 * @param measure the width of a text of a drawing
 * @returns where the size of each print is told: below it where its figure finds room within the piece, else beneath the
 * whole drawing. Where another print or figure stands in both places it is left out, for the words beside tell it too.
 */
export function placeMeasures(
  measure: (text: string) => number,
  { shape }: Drawing,
  placed: PlacedDrawing,
  { scale, wide }: { readonly scale: number; readonly wide: number },
): readonly Measure[] {
  const taken: Taken[] = placed.prints.map(({ print, xMm, yMm }) => ({
    left: (xMm - print.widthMm / 2) * scale,
    right: (xMm + print.widthMm / 2) * scale,
    top: yMm * scale,
    low: (yMm + print.heightMm) * scale,
  }));
  const hem = placed.heightMm * scale;
  const isShirt = shape === 'front' || shape === 'back';
  return placed.prints.flatMap(({ print }, at): readonly Measure[] => {
    const own = taken[at];
    if (own === undefined) return [];
    const text = print.size;
    const room = measure(text);
    const within = (half: number, y: number): Measure => {
      const middle = (own.left + own.right) / 2;
      const left = Math.min(Math.max(middle - room / 2, -half), half - room);
      const box = { left: left - 1, right: left + room + 1, top: y + 2, low: y + 13 };
      return { text, left: own.left, right: own.right, y, box };
    };
    const body = (placed.bodyMm * scale) / 2 - CLEAR - 1;
    const below = within(isShirt ? body : wide / 2, own.low + 5);
    const isOnBody = -body <= own.left && own.right <= body && room <= 2 * body;
    const isInside = !isShirt || (isOnBody && below.box.low <= hem - CLEAR);
    const places = isInside ? [below] : [within(wide / 2, Math.max(own.low, hem) + 5)];
    const free = places.find(({ box }) => !taken.some((other, of) => of !== at && overlap(other, box)));
    if (free === undefined) return [];
    taken.push(free.box);
    return [free];
  });
}

const overlap = (a: Taken, b: Taken): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.low && b.top < a.low;
