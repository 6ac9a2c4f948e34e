import { type BreakList, breakTotal } from '@/lib/price/list/breakList';

/** A quantity that costs exactly as much as a larger one. */
export interface Tie {
  readonly n: number;
  readonly as: number;
}

/** @returns the ties of a list whose larger quantity is no cheaper than any other, rising. */
export function ties(list: BreakList): readonly Tie[] {
  const starts = list.breaks.slice(1);
  const last = starts.at(-1)?.from ?? 0;
  return Array.from({ length: Math.max(0, last - 1) }, (_, index) => index + 1).flatMap((n) => {
    const total = breakTotal(list, n);
    const later = starts
      .filter(({ from }) => from > n)
      .map(({ from, each }) => ({ from, total: from * each }));
    const least = Math.min(...later.map((one) => one.total));
    const as = later.find((one) => one.total === least);
    return total !== null && total === least && as !== undefined ? [{ n, as: as.from }] : [];
  });
}
