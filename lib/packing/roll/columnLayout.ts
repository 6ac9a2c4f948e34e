import type { BoxKind, LaidBox } from '@/lib/packing/box';

/** Columns of a roll: so many of boxes upright, so many of boxes turned. */
interface Columns {
  readonly upright: number;
  readonly turned: number;
}

/**
 * Equal boxes on a roll in columns, each all upright or all turned, in the mix that makes the roll shortest.
 *
 * @param width ticks
 * @returns null where not one column goes on the roll
 */
export function columnLayout(width: number, kind: BoxKind): readonly LaidBox[] | null {
  let best: { readonly columns: Columns; readonly length: number } | null = null;
  const most = Math.min(kind.count, Math.floor(width / kind.width));
  for (let upright = most; upright >= 0; upright -= 1) {
    const left = width - upright * kind.width;
    const mayTurn = kind.mayTurn && kind.width !== kind.height;
    const turned = mayTurn ? Math.min(kind.count - upright, Math.floor(left / kind.height)) : 0;
    if (upright + turned === 0) continue;
    const columns = { upright, turned };
    const length = shortest(columns, kind);
    if (best === null || length < best.length) best = { columns, length };
  }
  return best === null ? null : lay(best.columns, best.length, kind);
}

/** The length at which the columns first hold all boxes: where a column gets one more. */
function shortest({ upright, turned }: Columns, { width, height, count }: BoxKind): number {
  const holds = (length: number) =>
    upright * Math.floor(length / height) + turned * Math.floor(length / width);
  const per = upright / height + turned / width;
  // Were boxes divisible this would be enough; from here on one box after the other is added.
  const least = count / per;
  const ends: number[] = [];
  for (const [columns, side] of [
    [upright, height],
    [turned, width],
  ] as const) {
    if (columns === 0) continue;
    for (let boxes = Math.max(1, Math.floor(least / side)); ; boxes += 1) {
      ends.push(boxes * side);
      if (holds(boxes * side) >= count) break;
    }
  }
  return ends
    .filter((length) => holds(length) >= count)
    .reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
}

function lay(
  { upright, turned }: Columns,
  length: number,
  { width, height, count }: BoxKind,
): readonly LaidBox[] {
  const columns = [
    ...Array.from({ length: upright }, (_, index) => ({ x: index * width, width, height })),
    ...Array.from({ length: turned }, (_, index) => ({
      x: upright * width + index * height,
      width: height,
      height: width,
    })),
  ];
  return columns
    .flatMap((column) =>
      Array.from({ length: Math.floor(length / column.height) }, (_, row) => ({
        kind: 0,
        ...column,
        y: row * column.height,
      })),
    )
    .toSorted((a, b) => a.y + a.height - b.y - b.height || a.x - b.x)
    .slice(0, count);
}
