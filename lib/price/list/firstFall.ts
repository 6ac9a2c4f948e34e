import { type Selling, sellingTotal } from './selling';

/** As far as a list is looked at: the largest first quantity of a break. */
export const LOOKED_AT_UP_TO = 2000;

/**
 * @returns the first quantity that costs less than the one before it, of 1 to 2,000; null where no total falls as
 * the quantity rises
 */
export function firstFall(selling: Selling): number | null {
  let before = 0;
  for (let n = 1; n <= LOOKED_AT_UP_TO; n += 1) {
    const total = sellingTotal(selling, n) ?? 0;
    if (total < before) return n;
    before = total;
  }
  return null;
}
