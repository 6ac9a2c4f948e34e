import { costInput } from '@/lib/costing/costInput';
import { costJob } from '@/lib/grid/costJob';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { JobInput } from '@/shared/schemas/request';
import type { Sale } from './orderSale';
import type { QuotedJob } from './quoteAsked';
import type { SoldLine } from './soldLine';

/** What a sale leaves its maker, currency units, unrounded. */
export interface SaleCost {
  readonly fullCost: number;
  /** Below it the maker pays to work. */
  readonly floor: number;
  readonly profit: number;
  /** Profit as a share of the price without tax. */
  readonly margin: number;
  /** Null where no paid time is known. */
  readonly payPerHour: number | null;
}

/**
 * Jobs put through the grid at what is paid for them: pieces at the mean of their size, and whatever the order pays
 * beside them as something it pays once, so that fees are of all the money.
 *
 * @param jobs with the quantities and prints that are sold
 * @returns null where a sum gives no number, or a stop stands
 */
export function costSale(jobs: readonly QuotedJob[], sale: Sale, grid: Grid): SaleCost | null {
  const beside =
    sale.charges.reduce((sum, { amount }) => sum + amount, 0) -
    sale.lines.flatMap(({ charges }) => charges).reduce((sum, { amount }) => sum + amount, 0) -
    (sale.discount?.amount ?? 0);
  const sheets = jobs.map(({ jobId, input }, index) => {
    const lines = sale.lines.filter((line) => line.jobId === jobId);
    return soldSheet(input, lines, index === 0 ? beside : 0, grid);
  });
  const known = sheets.filter((sheet) => sheet !== null);
  return known.length < jobs.length ? null : sumOf(known);
}

// Helpers

function soldSheet(input: JobInput, sold: readonly SoldLine[], beside: number, grid: Grid): CostSheet | null {
  const costed = costInput(input, grid);
  if (costed === null) return null;
  const { laidOut } = costed;
  const { job } = laidOut;
  const { currency } = job.workshop;
  const lines = job.lines.map((line, index): ResolvedLine => {
    const found = sold.find(({ lineId }) => lineId === line.line.id);
    return found === undefined ? line : paidFor(line, found, index === 0 ? beside : 0, currency);
  });
  const result = costJob({ ...laidOut, job: { ...job, lines } }, grid);
  return result.kind === 'costed' ? result.job.sheet : null;
}

function paidFor(line: ResolvedLine, sold: SoldLine, beside: number, currency: string): ResolvedLine {
  const once = sold.start + sold.charges.reduce((sum, { amount }) => sum + amount, 0) + beside;
  return {
    ...line,
    sizes: line.sizes.map((size) => {
      const rows = sold.sizes.filter((one) => one.size === size.size);
      const [total, pieces] = [
        rows.reduce((sum, row) => sum + row.total, 0),
        rows.reduce((sum, row) => sum + row.quantity, 0),
      ];
      return {
        ...size,
        askedPrice: pieces === 0 ? size.askedPrice : fromMinor(total as MinorUnits, currency) / pieces,
        askedStart: fromMinor(once as MinorUnits, currency),
      };
    }),
  };
}

function sumOf(sheets: readonly CostSheet[]): SaleCost {
  const sum = (row: string) => sheets.reduce((running, sheet) => running + wholeJob(sheet, row), 0);
  const [profit, price, attended] = [sum('profit'), sum('price'), sum('attended')];
  return {
    fullCost: sum('fullCost'),
    floor: sum('outOfPocketFloor'),
    profit,
    margin: profit / price,
    payPerHour: attended > 0 ? (profit + sum('labourExpected')) / (attended / 60) : null,
  };
}
