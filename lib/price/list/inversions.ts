import type { MinorUnits } from '@/shared/money';
import { type BreakList, breakTotal } from './breakList';

/** Neighbouring quantities that all cost more than a larger one. */
export interface Inversion {
  readonly from: number;
  readonly to: number;
  /** The larger quantity that costs least, seen from the end of the stretch. */
  readonly cheaperAt: number;
  readonly cheaperTotal: MinorUnits;
}

/**
 * The stretches of a price list in which more pieces would cost less. A tie is none. Totals only ever fall at the
 * start of a break, so these are all that a larger quantity has to be compared with.
 *
 * @param upTo the largest quantity anybody is thought to ask for; the start of the last break unless told
 * @returns rising, never two that touch
 */
export function inversions(
  list: BreakList,
  upTo: number = list.breaks.at(-1)?.from ?? 1,
): readonly Inversion[] {
  const starts = list.breaks.slice(1).filter(({ from }) => from <= upTo);
  const found: Inversion[] = [];
  for (let n = list.breaks[0].from; n < (starts.at(-1)?.from ?? 0); n += 1) {
    const later = starts
      .filter(({ from }) => from > n)
      .map(({ from, each }) => ({ from, total: from * each }))
      .reduce((least, next) => (next.total < least.total ? next : least));
    const total = breakTotal(list, n) ?? 0;
    if (total <= later.total) continue;
    const open = found.at(-1);
    const stretch = { to: n, cheaperAt: later.from, cheaperTotal: later.total as MinorUnits };
    if (open?.to === n - 1) found[found.length - 1] = { from: open.from, ...stretch };
    else found.push({ from: n, ...stretch });
  }
  return found;
}
