import type { CostedJob } from '@/lib/grid/costJob';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { type BreakList, breakListOf } from '@/lib/price/list/breakList';
import { firstFall } from '@/lib/price/list/firstFall';
import { type Inversion, inversions } from '@/lib/price/list/inversions';
import { type LineList, sellingOf } from '@/lib/price/list/lineList';
import type { Selling } from '@/lib/price/list/selling';
import type { MinorUnits } from '@/shared/money';
import { nextPieceFloor } from './nextPieceFloor';
import { type ThinStep, thinSteps } from './thinSteps';
import { type Tie, ties } from './ties';

/** Sizes of a line that add the same to its list, and what the list does for them as the quantity rises. */
export interface BreakGroup {
  readonly sizes: readonly string[];
  /** The prices of each break, the charge of the sizes included. */
  readonly list: BreakList;
  /** How orders of these sizes are reckoned. */
  readonly sold: Selling;
  /** Of a list that is sold as it stands: quantities that would cost more than a larger one. */
  readonly stretches: readonly Inversion[];
  readonly ties: readonly Tie[];
  /** The first quantity of 1 to 2,000 that costs less than the one before, by the rule in force; null for none. */
  readonly falls: number | null;
  /** Pieces that bring in less than they cause, by the rule in force; those that bring in less than nothing fall. */
  readonly thin: readonly ThinStep[];
  /** What a next piece must bring in at the least, currency units, as the channel writes prices. */
  readonly nextPieceFloor: number;
}

/** @returns the groups of a list in the order of their first sizes. */
export function breakGroups(
  { sheet, laidOut }: CostedJob,
  { line }: ResolvedLine,
  list: LineList,
): readonly BreakGroup[] {
  const { currency } = laidOut.job.workshop;
  const groups = new Map<number, string[]>();
  for (const { size, more } of list.sizes) groups.set(more, [...(groups.get(more) ?? []), size]);
  return [...groups].flatMap(([more, sizes]): readonly BreakGroup[] => {
    const sold = sellingOf(list, more as MinorUnits, currency);
    const listed = breakListOf(
      list.breaks.map(({ from, each }) => ({ from, each: (each + more) as MinorUnits })),
      currency,
    );
    if (!sold.ok || !listed.ok) return [];
    const index = sheet.cases.findIndex(({ lineId, size }) => lineId === line.id && size === sizes[0]);
    const floor = nextPieceFloor(sheet, index);
    const stands = list.rule === 'asListed';
    // A rule goes on beyond the last break as it begins there.
    const upTo = (list.breaks.at(-1)?.from ?? 1) + 1;
    return [
      {
        sizes,
        list: listed.value,
        sold: sold.value,
        stretches: stands ? inversions(listed.value) : [],
        ties: stands ? ties(listed.value) : [],
        falls: firstFall(sold.value),
        thin: thinSteps(sold.value, floor, upTo, currency).filter(({ paid }) => paid >= 0),
        nextPieceFloor: floor,
      },
    ];
  });
}
