import type { PressFault } from '@/shared/tables/faults';

/**
 * Parts causes into those that stand open and the rare ones behind them, each in the order given.
 *
 * @param faults the likeliest first
 * @param many how many stand open
 * @param running the fault of the press before: it always stands open; null where there is none
 */
export function causeTiles(
  faults: readonly PressFault[],
  many: number,
  running: PressFault | null,
): { readonly open: readonly PressFault[]; readonly rare: readonly PressFault[] } {
  const first = faults.slice(0, many);
  const isHidden = running !== null && running !== 'other' && !first.includes(running);
  const open = isHidden ? [...first.slice(0, -1), running] : first;
  return { open, rare: faults.filter((fault) => !open.includes(fault)) };
}
