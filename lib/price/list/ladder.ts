import type { MinorUnits } from '@/shared/money';
import type { LineList } from './lineList';
import { orderRows } from './orderRows';

/** One price of a list as it is read from left to right. */
export interface LadderStep {
  /** `together`: an order pays this sum, however many it is; `start`: once an order; `each`: every piece. */
  readonly kind: 'together' | 'start' | 'each';
  readonly from: number;
  /** Last quantity it is told for; null for all that are larger. */
  readonly to: number | null;
  /** Last quantity of its break. */
  readonly breakTo: number | null;
  /** Whole minor units, in the sizes without a charge. */
  readonly amount: MinorUnits;
  /** What one piece pays where larger orders pay together; null where that is no question. */
  readonly alone: MinorUnits | null;
}

/** @returns the prices of a list, one a break: the first orders of a capped list as the sum they pay. */
export function ladderOf(list: Pick<LineList, 'rule' | 'start' | 'breaks'>): readonly LadderStep[] {
  const { rule, start, breaks } = list;
  const [first] = breaks;
  if (first === undefined) return [];
  const plain = { to: null, breakTo: null, alone: null } as const;
  if (rule === 'setUpApart')
    return [
      { ...plain, kind: 'start', from: first.from, amount: start },
      { ...plain, kind: 'each', from: first.from, amount: first.each },
    ];
  const rows = orderRows(list);
  if (rule !== 'capped')
    return rows.map(({ from, to, amount }) => ({ kind: 'each', from, to, breakTo: to, amount, alone: null }));
  const steps = breaks.filter(({ each }, at) => breaks[at - 1]?.each !== each);
  return steps.flatMap(({ from, each }, at): readonly LadderStep[] => {
    const next = steps[at + 1]?.from ?? null;
    const breakTo = next === null ? null : next - 1;
    const inside = rows.filter((row) => row.from >= from && (next === null || row.from < next));
    const together = inside.find(({ kind }) => kind === 'together');
    const [begins] = inside;
    // A break that begins with a price a piece is told by it: its last orders are the rule's business.
    if (begins === undefined || begins.kind === 'each' || together === undefined)
      return [{ kind: 'each', from, to: breakTo, breakTo, amount: each, alone: null }];
    const alone = begins.kind === 'single' ? begins.amount : null;
    return [{ kind: 'together', from, to: together.to, breakTo, amount: together.amount, alone }];
  });
}
