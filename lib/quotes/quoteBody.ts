import type { Finding } from '@/shared/finding';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { QuoteDraft } from './makeQuote';

/**
 * @param number the order's version: how many quotes of the order there were
 * @param says a finding in the maker's own words
 * @returns the quote as it goes out
 */
export const quoteBody = (
  { body, risks }: QuoteDraft,
  number: PaperNumber,
  says: (risk: Finding) => string,
): Quote => ({
  ...body,
  number,
  owner: { ...body.owner, risks: risks.map((risk) => says(risk).slice(0, 600)).slice(0, 200) },
});
