import type { GapLine } from '@/shared/schemas/making/runEvents';
import type { ActualFrom, RunActuals } from './runActuals';
import type { RunBudget, Used } from './runBudget';

/** What a formula counts in. */
export type GapUnit = 'piece' | 'sheet' | 'mL' | 'h' | 'money';

/** One reason why a run came out other than its standard: amount = (from − to) × times. */
export interface Gap {
  readonly line: GapLine;
  /** Currency units, unrounded; above 0 in the maker's favour. */
  readonly amount: number;
  readonly from: number;
  readonly to: number;
  readonly times: number;
  /** What is subtracted, and what that is multiplied by. */
  readonly units: readonly [difference: GapUnit, times: GapUnit | null];
  /** Whence what came comes. */
  readonly actual: ActualFrom;
}

/**
 * Why a run came out other than its standard for the good pieces it made, line by line: price (SP − AP) · AQ, use
 * (SQ − AQ) · SP, time and overhead (SH − AH) · rate, all else standard less actual; income the other way round. OpenStax
 * Principles of Accounting 2, chapter 8. The lines add up to what the profit differs by.
 *
 * @param frozen the budget for what was wanted, as it stood when the run began
 * @param budget the same for the good pieces made
 * @param sparesCost what was bought of those beyond an order and of seconds, currency units: it lies in stock
 */
export function gapsOf(
  frozen: RunBudget,
  budget: RunBudget,
  actuals: RunActuals,
  sparesCost: number,
): readonly Gap[] {
  const { labour } = actuals;
  const spent = (line: 'freight' | 'otherCost' | 'fees' | 'reprints'): Gap => ({
    line,
    ...times(budget[line], actuals[line].amount, 1),
    units: ['money', null],
    actual: actuals[line].from,
  });
  const revenue = actuals.revenue;
  return [
    {
      line: 'output',
      ...times(profitOf(budget) + sparesCost, profitOf(frozen), 1),
      units: ['money', null],
      actual: 'counted',
    },
    {
      line: 'revenue',
      ...times(revenue?.amount ?? 0, revenue === null ? 0 : (budget.revenue ?? 0), 1),
      units: ['money', null],
      actual: revenue?.from ?? 'standard',
    },
    priceGap('blanksPrice', budget.blanks, actuals.blanks, 'piece'),
    quantityGap('blanksUsage', budget.blanks, actuals.blanks, 'piece'),
    priceGap('paperPrice', budget.sheets, actuals.sheets, 'sheet'),
    quantityGap('paperUsage', budget.sheets, actuals.sheets, 'sheet'),
    quantityGap('inkUsage', budget.ink, actuals.ink, 'mL'),
    quantityGap('labour', budget.labour, labour, 'h'),
    {
      line: 'overhead',
      ...times(budget.labour.quantity, labour.quantity, budget.overheadPerHour),
      units: ['h', 'money'],
      actual: labour.quantityFrom,
    },
    spent('freight'),
    spent('otherCost'),
    spent('fees'),
    spent('reprints'),
  ];
}

/** @returns what a budget leaves, currency units; a job without a price brings nothing in. */
const profitOf = (budget: RunBudget): number =>
  (budget.revenue ?? 0) -
  budget.fees -
  costOf(budget.blanks) -
  costOf(budget.sheets) -
  costOf(budget.ink) -
  costOf(budget.labour) -
  budget.labour.quantity * budget.overheadPerHour -
  budget.freight -
  budget.otherCost -
  budget.reprints;

// Helpers

type Actual = RunActuals['blanks'];

const costOf = ({ quantity, each }: Used): number => quantity * each;

const times = (from: number, to: number, by: number) => ({ amount: (from - to) * by, from, to, times: by });

const priceGap = (line: GapLine, budget: Used, actual: Actual, unit: GapUnit): Gap => ({
  line,
  ...times(budget.each, actual.each, actual.quantity),
  // By what all of them cost, so that an amount that was paid counts though none is said to be used.
  amount: budget.each * actual.quantity - actual.cost,
  units: ['money', unit],
  actual: actual.eachFrom,
});

const quantityGap = (line: GapLine, budget: Used, actual: Actual, unit: GapUnit): Gap => ({
  line,
  ...times(budget.quantity, actual.quantity, budget.each),
  units: [unit, 'money'],
  actual: actual.quantityFrom,
});
