import { type PricedSize, sizeGroups } from '@/lib/papers/words/sizeGroups';
import { documentTax } from '@/lib/price/tax/documentTax';
import { DOUBLE_DIGITS, roundDecimal } from '@/shared/decimal';
import { type MinorUnits, splitMinor } from '@/shared/money';
import type { SaleSums, TaxOnPaper } from '@/shared/schemas/paperParts';

/** What is sold, as far as it makes a sum; whole minor units as prices are written. */
interface Summed {
  readonly lines: readonly {
    readonly sizes: readonly PricedSize[];
    readonly start: number;
  }[];
  readonly charges: readonly { readonly amount: number }[];
}

/**
 * @returns each amount as it stands on the paper, in its order: sizes of a line, those of one price in one row; what it
 *   pays once; charges
 */
const amountsOf = ({ lines, charges }: Summed): readonly MinorUnits[] =>
  [
    ...lines.flatMap(({ sizes, start }) => [
      ...sizeGroups(sizes).map(({ total }) => total),
      ...(start === 0 ? [] : [start]),
    ]),
    ...charges.map(({ amount }) => amount),
  ].map((amount) => amount as MinorUnits);

/** @returns what they come to before anything is taken off. */
export const beforeDiscount = (sold: Summed): number =>
  amountsOf(sold).reduce((sum, amount) => sum + amount, 0);

/** @returns a share of whole minor units, half a unit rounded up. */
export const shareOf = (amount: number, share: number): MinorUnits =>
  roundDecimal(amount * share, 0, 'halfUp', DOUBLE_DIGITS) as MinorUnits;

/**
 * The sums at the foot of a paper. The discount is spread over the rows by largest remainder, so that tax on each
 * line is of what is paid for it, as the paper shows it; of amounts that give money back none is taken.
 *
 * @param discount whole minor units, 0 or more and no more than it all comes to
 */
export function saleSums(sold: Summed, discount: number, tax: TaxOnPaper, currency: string): SaleSums {
  const amounts = amountsOf(sold);
  const paid = amounts.map((amount) => Math.max(0, amount));
  const off =
    discount === 0 || paid.every((amount) => amount === 0)
      ? amounts.map(() => 0)
      : splitMinor(discount as MinorUnits, paid);
  const left = amounts.map((amount, index) => (amount - (off[index] ?? 0)) as MinorUnits);
  const subtotal = left.reduce((sum, amount) => sum + amount, 0);
  const { mode, share, rounding } = tax;
  if (mode === 'none') return { subtotal, tax: 0, total: subtotal };
  const { total } = documentTax(
    left.map((amount) => ({ amount, tax: share })),
    { currency, mode, rounding },
  );
  return { subtotal, tax: total.tax, total: total.with };
}

/** What nothing comes to. */
export const noSums: SaleSums = { subtotal: 0, tax: 0, total: 0 };

/** What was charged for since something was agreed, whole minor units as prices are written. */
export type Changes = readonly { readonly what: string; readonly amount: number }[];

/**
 * What was agreed comes to with what was charged since. A discount was agreed on what there was, so that none of it is
 * taken off a change; tax that is rounded once is taken of the whole paper.
 */
export function sumsWithChanges(
  { sums, tax, currency }: { readonly sums: SaleSums; readonly tax: TaxOnPaper; readonly currency: string },
  changes: Changes,
): SaleSums {
  if (changes.length === 0) return sums;
  const taxed = (charges: Changes) => saleSums({ lines: [], charges }, 0, tax, currency);
  if (tax.rounding === 'document') return taxed([{ what: '', amount: sums.subtotal }, ...changes]);
  const added = taxed(changes);
  return {
    subtotal: sums.subtotal + added.subtotal,
    tax: sums.tax + added.tax,
    total: sums.total + added.total,
  };
}
