type Point = readonly [x: number, y: number];

/** @returns the path of a line through points, broken where one is missing; to a tenth of a pixel. */
export function linePath(points: readonly (Point | null)[]): string {
  let isBroken = true;
  return points
    .map((point) => {
      if (point === null) {
        isBroken = true;
        return '';
      }
      const sign = isBroken ? 'M' : 'L';
      isBroken = false;
      return `${sign}${tenth(point[0])} ${tenth(point[1])}`;
    })
    .join('');
}

/** @returns the outline between two lines, along the first and back along the second; nothing where a point is missing. */
export function areaPath(along: readonly (Point | null)[], back: readonly (Point | null)[]): string {
  const both = along.flatMap((point, at) => {
    const other = back[at];
    return point === null || other == null ? [] : [[point, other] as const];
  });
  if (both.length === 0) return '';
  return `${linePath([...both.map(([point]) => point), ...both.map(([, other]) => other).reverse()])}Z`;
}

// Helpers

const tenth = (px: number): number => Math.round(px * 10) / 10;
