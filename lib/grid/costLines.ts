interface CostLine {
  /** Row of the baseline: good pieces and planned tests. */
  readonly id: string;
  /** Row with what rejects, scrap and faulty blanks add; null where spoilage does not touch the line. */
  readonly expected: string | null;
  /** Row of what of it leaves the pocket as cash; null where nothing does. */
  readonly cash: string | null;
}

/** The cost lines in the order they are read; they add to full cost. Every list and sum of them is made from this one. */
const costLines = [
  { id: 'blanks', expected: 'blanksExpected', cash: 'blanksExpected' },
  { id: 'paper', expected: 'paperExpected', cash: 'paperExpected' },
  { id: 'ink', expected: 'inkExpected', cash: 'inkExpected' },
  { id: 'supplies', expected: 'suppliesExpected', cash: 'suppliesExpected' },
  { id: 'electricity', expected: 'electricityExpected', cash: 'electricityExpected' },
  { id: 'wear', expected: 'wearExpected', cash: null },
  { id: 'labour', expected: 'labourExpected', cash: null },
  { id: 'overhead', expected: 'overheadExpected', cash: null },
  { id: 'packaging', expected: null, cash: 'packaging' },
  { id: 'delivery', expected: null, cash: 'delivery' },
  { id: 'ownCosts', expected: null, cash: 'ownCash' },
  { id: 'spoilage', expected: null, cash: null },
  { id: 'reprints', expected: null, cash: null },
] as const satisfies readonly CostLine[];

type Line = (typeof costLines)[number];

export type CostLineId = Line['id'];

/** Every row that a sum of the cost lines names. */
export type CostLineRowId = CostLineId | NonNullable<Line['expected' | 'cash']>;

export const costLineIds: readonly CostLineId[] = costLines.map(({ id }) => id);

/** Formula of everything a good piece costs. */
export const everyLine: string = costLineIds.join(' + ');

/** Formula of normal spoilage: what expected use adds to the baseline. */
export const spoiledLines: string = costLines
  .flatMap(({ id, expected }) => (expected === null ? [] : [`(${expected} - ${id})`]))
  .join(' + ');

/** Formula of what leaves the pocket, as much of it as is expected. */
export const cashLines: string = costLines.flatMap(({ cash }) => cash ?? []).join(' + ');
