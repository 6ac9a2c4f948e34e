import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { type BreakList, breakTotal } from '@/lib/price/list/breakList';
import { inversions } from '@/lib/price/list/inversions';
import { sellingOf } from '@/lib/price/list/lineList';
import { orderRows } from '@/lib/price/list/orderRows';
import { sellingTotal } from '@/lib/price/list/selling';
import type { PricedLine } from '@/lib/price/priceTable';
import type { MinorUnits } from '@/shared/money';
import type { Staircase, StairFall } from './staircase';

/** Past the quantity asked and the last but one break there is nothing new to see; no drawing is longer. */
const BEYOND = 1.6;
const LONGEST = 200;

/** @returns what orders pay by the list of a line, over what they must bring. */
export function staircaseOf(line: ResolvedLine, { list, needs }: PricedLine, currency: string): Staircase {
  const { judged, afterFees, keepShare, taxFactor } = needs;
  const selling = sellingOf(list, 0 as MinorUnits, currency);
  const lastButOne = list.breaks.at(-2)?.from ?? list.breaks[0]?.from ?? 1;
  const to = Math.min(LONGEST, Math.ceil(BEYOND * Math.max(piecesOf(line), lastButOne)));
  return {
    size: needs.base.size.size,
    points: Array.from({ length: to }, (_, index) => {
      const n = index + 1;
      const target = judged.target(n) * n * taxFactor;
      return {
        n,
        pays: selling.ok ? sellingTotal(selling.value, n) : null,
        target,
        fullCost: (target * keepShare) / afterFees,
      };
    }),
    falls: selling.ok && selling.value.kind === 'asListed' ? fallsOf(selling.value.list) : [],
    held: orderRows(list).flatMap(({ kind, from, to: last, amount }) =>
      kind === 'together' && last !== null ? [{ from, to: last, pays: amount }] : [],
    ),
  };
}

function fallsOf(list: BreakList): readonly StairFall[] {
  return inversions(list).map((stretch) => {
    const { from, to, cheaperTotal } = stretch;
    const pays = Array.from({ length: to - from + 1 }, (_, step) => breakTotal(list, from + step) ?? 0);
    return { ...stretch, lost: (Math.max(...pays) - cheaperTotal) as MinorUnits };
  });
}
