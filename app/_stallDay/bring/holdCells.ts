import { typing } from '@/app/_documents/typing';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import type { BringCell } from '@/lib/stall/plan/bringGrid';
import { holdNumbers } from '@/lib/stall/plan/holdNumbers';

/** Holds a number of each of some goods: one step to undo. */
export function holdCells(
  { change }: Pick<StallOnScreen, 'change'>,
  label: string,
  cells: readonly BringCell[],
  of: (cell: BringCell) => number,
): void {
  typing.ends();
  const numbers = cells.map((cell) => ({
    ...{ jobId: cell.jobId, lineId: cell.lineId, size: cell.size },
    bring: of(cell),
  }));
  change(label, (stallDay) => ({ ...stallDay, held: holdNumbers(stallDay.held, numbers) }));
}

/** Whether something that the maker holds is not what is advised. */
export const isOtherThanAdvised = ({ held, advised }: BringCell): boolean =>
  held !== null && held !== advised;
