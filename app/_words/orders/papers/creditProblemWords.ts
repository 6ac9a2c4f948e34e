import { minorMoney } from '@/app/_words/orders/minorWords';
import type { CreditProblem } from '@/lib/quotes/following/creditNoteOf';
import type { TaxOnPaper } from '@/shared/schemas/paperParts';

/** @returns why a credit note cannot be made, and what mends it. */
export function creditProblemWords(
  problem: CreditProblem,
  {
    currency,
    locale,
    mode,
  }: { readonly currency: string; readonly locale: string; readonly mode: TaxOnPaper['mode'] },
): string {
  switch (problem.kind) {
    case 'nothing':
      return 'Nothing is given back yet. Add a part, or all that is left.';
    case 'notAboveZero':
      return `${problem.what === '' ? 'A part' : `“${problem.what}”`} gives nothing back. Type an amount above 0.`;
    case 'overInvoice':
      return `${minorMoney(problem.asked, currency, locale)} is more than the ${minorMoney(problem.left, currency, locale)}${mode === 'added' ? ' without tax' : ''} that is left of the invoice. Give back less.`;
    default:
      return problem satisfies never;
  }
}
