import { fromMinor, LARGEST_AMOUNT, type MinorUnits, toMinor } from '@/shared/money';
import type { ShopStatement } from '@/shared/schemas/stallEvents';

type Row = Pick<ShopStatement['rows'][number], 'sold' | 'missing' | 'eachMinor'>;

/** How a shop settles, on the day of a statement. */
export interface ShopTerms {
  /** What it keeps, share of its price. */
  readonly commissionShare: number;
  readonly commissionBase: ShopStatement['commissionBase'];
  readonly taxMode: 'added' | 'inside' | 'none';
  /** Share of the price without tax. */
  readonly tax: number;
  /** Who bears what is missing; null where nothing is agreed, and then it is the maker. */
  readonly bears: 'maker' | 'shop' | null;
  readonly currency: string;
}

/** All whole minor units, as the way of selling writes prices. */
export interface StatementDue {
  /** Of the pieces that are owed for. */
  readonly grossMinor: number;
  readonly commissionMinor: number;
  readonly dueMinor: number;
}

/** @returns how many pieces of a row are owed for: missing ones where the shop bears them. */
export const owedPieces = ({ sold, missing }: Pick<Row, 'sold' | 'missing'>, bears: ShopTerms['bears']) =>
  sold + (bears === 'shop' ? missing : 0);

/**
 * What a shop owes for a statement. The commission is rounded once, on the sum, half away from zero.
 *
 * @returns null where the sum is beyond what is kept exact to the cent
 */
export function statementDue(rows: readonly Row[], terms: ShopTerms): StatementDue | null {
  const { commissionShare, commissionBase, taxMode, tax, bears, currency } = terms;
  const grossMinor = rows.reduce((sum, row) => sum + owedPieces(row, bears) * row.eachMinor, 0);
  const gross = fromMinor(grossMinor as MinorUnits, currency);
  if (gross > LARGEST_AMOUNT / 2) return null;
  const base = gross * taxFactor(commissionBase, taxMode, tax);
  const commissionMinor = toMinor(base * commissionShare, currency);
  return { grossMinor, commissionMinor, dueMinor: grossMinor - commissionMinor };
}

/** From a price as it is written to what commission is taken of. */
function taxFactor(base: ShopTerms['commissionBase'], mode: ShopTerms['taxMode'], tax: number): number {
  if (base === 'withTax') return mode === 'added' ? 1 + tax : 1;
  return mode === 'inside' ? 1 / (1 + tax) : 1;
}
