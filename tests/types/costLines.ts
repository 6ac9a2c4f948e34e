import type { CostLineId, CostLineRowId } from '@/lib/grid/costLines';
import type { moneyRows } from '@/lib/grid/rows/moneyRows';

/** Rows of the grid that have a label and a formula; the maker's own stand in a table of theirs. */
type Labelled = (typeof moneyRows)[number]['id'] | 'ownCosts' | 'ownCash';

declare const named: CostLineRowId;

// Does not compile while a sum of the cost lines names a row that is not there.
named satisfies Labelled;

// @ts-expect-error a row that is not in the list is no cost line
const stray: CostLineId = 'incrementalCost';

const shadeless = {
  blanks: 1,
  // @ts-expect-error every cost line needs its entry
} satisfies Record<CostLineId, number>;

export { shadeless, stray };
