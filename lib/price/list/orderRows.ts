import type { MinorUnits } from '@/shared/money';
import type { SellingRule } from '@/shared/schemas/sellingRule';
import { breakListOf } from './breakList';
import { sellingTotal } from './selling';

/** What orders of so many pieces pay, as a buyer reads it. */
export interface OrderRow {
  readonly from: number;
  /** Last quantity; null for all that are larger. */
  readonly to: number | null;
  /**
   * `single`: one piece has this price. `together`: an order of that many pays this sum, however many it is.
   * `each`: every piece costs this.
   */
  readonly kind: 'single' | 'together' | 'each';
  /** Whole minor units, in the sizes without a charge. */
  readonly amount: MinorUnits;
}

interface ListedBreaks {
  readonly rule: SellingRule;
  readonly breaks: readonly { readonly from: number; readonly each: number }[];
}

/**
 * The rows of a list as papers and screens tell it. Small orders of a capped list are told as the sum they pay: their
 * price a piece is one that nobody pays. Neighbouring breaks of one price are one row.
 *
 * @returns rising, with no gap; of set-up apart the price of a piece, to which the start comes
 */
export function orderRows({ rule, breaks }: ListedBreaks): readonly OrderRow[] {
  const list = breakListOf(
    breaks.map(({ from, each }) => ({ from, each: each as MinorUnits })),
    '',
  );
  if (!list.ok) return [];
  const steps = list.value.breaks.filter(({ each }, at, all) => all[at - 1]?.each !== each);
  return steps.flatMap(({ from, each }, index): readonly OrderRow[] => {
    const next = steps[index + 1]?.from;
    if (next === undefined) return [{ from, to: null, kind: 'each', amount: each }];
    if (rule !== 'capped') return [row(from, next - 1, each)];
    const total = (n: number) => sellingTotal({ kind: 'capped', list: list.value }, n) ?? (0 as MinorUnits);
    let held = from;
    while (held < next && total(held) === held * each) held += 1;
    return [
      ...(held > from ? [row(from, held - 1, each)] : []),
      // From here on all pay what the first order of a later break does.
      ...(held < next ? [heldRow(held, next - 1, total(held))] : []),
    ];
  });
}

const row = (from: number, to: number, amount: MinorUnits): OrderRow => ({
  from,
  to,
  kind: from === 1 && to === 1 ? 'single' : 'each',
  amount,
});

const heldRow = (from: number, to: number, amount: MinorUnits): OrderRow => ({
  from,
  to,
  kind: from === 1 && to === 1 ? 'single' : 'together',
  amount,
});
