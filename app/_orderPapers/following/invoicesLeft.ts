import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import type { OutOf } from '@/lib/orders/orderFacts';
import type { CreditNote } from '@/shared/schemas/orderPapers';
import type { SaleSums } from '@/shared/schemas/paperParts';

interface InvoiceLeft {
  readonly paper: OutOf<'invoice'>;
  /** Credit notes in force that correct it. */
  readonly earlier: readonly CreditNote[];
  /** What of it was not given back. */
  readonly left: SaleSums;
}

/** @returns the invoices in force, the last first. */
export function invoicesLeft({ facts }: Pick<OrderOnPaper, 'facts'>): readonly InvoiceLeft[] {
  const inForce = facts.happened.filter((one) => 'withdrawn' in one && !one.withdrawn);
  const credits = inForce.flatMap((one) => (one.kind === 'creditNote' ? [one.body] : []));
  return inForce
    .flatMap((one) => (one.kind === 'invoice' ? [one] : []))
    .map((paper) => {
      const earlier = credits.filter(({ invoice }) => invoice.paperId === paper.id);
      const less = (of: keyof SaleSums) =>
        earlier.reduce((rest, { sums }) => rest - sums[of], paper.body.sums[of]);
      return {
        paper,
        earlier,
        left: { subtotal: less('subtotal'), tax: less('tax'), total: less('total') },
      };
    })
    .toReversed();
}
