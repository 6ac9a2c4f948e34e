import type { CostSheet } from '@/lib/grid/costSheet';

/** The way between a price as the channel writes it and the same price without tax. */
export interface TaxTerms {
  /** Share of tax that written prices have inside; 0 where it is added later or there is none. */
  readonly inside: number;
  readonly withoutTax: (written: number) => number;
  readonly written: (withoutTax: number) => number;
}

/** @returns the terms a costed job was priced in, as its sums took them. */
export const taxTerms = ({ jobValues }: Pick<CostSheet, 'jobValues'>): TaxTerms =>
  taxTermsOf((jobValues.taxInside ?? 0) * (jobValues.tax ?? 0));

/** @param inside the share that an answer carries where no function can go along */
export const taxTermsOf = (inside: number): TaxTerms => ({
  inside,
  withoutTax: (written) => written / (1 + inside),
  written: (withoutTax) => withoutTax * (1 + inside),
});
