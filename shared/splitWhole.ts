/**
 * Whole parts that add to a whole total, by largest remainder; ties go to the part named first.
 *
 * @param total whole number
 * @param exact what each part would be if it need not be whole; may be negative
 * @returns one whole number for each, within one of its exact value where they add to the total
 * @example splitWhole(40, [13.33, 13.33, 13.33]) // => [14, 13, 13]
 */
export function splitWhole(total: number, exact: readonly number[]): number[] {
  const parts = exact.map((value) => Math.floor(value));
  const order = exact
    .map((value, index) => ({ index, rest: value - Math.floor(value) }))
    .sort((a, b) => b.rest - a.rest || a.index - b.index);
  let left = total - parts.reduce((running, part) => running + part, 0);
  for (let turn = 0; left !== 0 && order.length > 0; turn += 1) {
    const at = left > 0 ? order[turn % order.length] : order[order.length - 1 - (turn % order.length)];
    if (at === undefined) break;
    parts[at.index] = (parts[at.index] ?? 0) + Math.sign(left);
    left -= Math.sign(left);
  }
  return parts;
}
