import type { Quote } from '@/shared/schemas/orderPapers';
import type { SoldFor } from './soldAt';

/** A line of a quote as it was sold. */
export type SoldOfQuote = SoldFor & {
  readonly jobId: string;
  readonly lineId: string;
  readonly without: readonly string[];
};

/**
 * What was accepted, line by line, with what a line of its own takes off or adds beside its pieces.
 *
 * @param alternativeId null for what was asked
 * @returns nothing where the quote has no such alternative
 */
export function soldIn(quote: Quote, alternativeId: string | null): readonly SoldOfQuote[] {
  const chosen = quote.alternatives.find(({ id }) => id === alternativeId);
  const asked = quote.goods.map(
    ({ jobId, lineId, sizes, start }): SoldOfQuote => ({
      ...{ jobId, lineId, sizes, start },
      beside: 0,
      without: [],
    }),
  );
  if (alternativeId === null) return asked;
  if (chosen === undefined) return [];
  const beside = sumOf(chosen.priced.charges) - sumOf(quote.charges);
  return chosen.priced.lines.map((line): SoldOfQuote => {
    const before = asked.find(({ jobId, lineId }) => jobId === line.jobId && lineId === line.lineId);
    // Only one line is another; what is taken off so that fewer pieces are not dearer is of that line.
    const isIt = before === undefined || textOf(before) !== textOf(line);
    return { ...line, beside: isIt ? beside : 0 };
  });
}

// Helpers

const sumOf = (charges: readonly { readonly amount: number }[]): number =>
  charges.reduce((sum, { amount }) => sum + amount, 0);

const textOf = ({ sizes, start, without }: Pick<SoldOfQuote, 'sizes' | 'start' | 'without'>): string =>
  JSON.stringify([sizes.map(({ size, quantity, each }) => [size, quantity, each]), start, without]);
