/**
 * @param strips a figure for each of equal strips
 * @param from share of the way at which the stretch begins, 0–1
 * @param length share of the way it takes, above 0
 * @returns mean over the stretch, strips that are cut through in proportion
 */
export function meanWithin(strips: readonly number[], from: number, length: number): number {
  const start = from * strips.length;
  const end = (from + length) * strips.length;
  const sum = strips.reduce((total, ink, at) => {
    const inside = Math.min(end, at + 1) - Math.max(start, at);
    return inside > 0 ? total + ink * inside : total;
  }, 0);
  return sum / (end - start);
}
