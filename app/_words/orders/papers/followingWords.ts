import { listed } from '@/app/_words/listed';
import type { GoodsProblem } from '@/lib/quotes/following/goodsPapers';
import type { SaleSums, TaxOnPaper } from '@/shared/schemas/paperParts';

/** An answer line: the bold part first. */
export interface AnswerLine {
  readonly strong: string;
  readonly rest: string;
}

/** Why there is no paper that rests on an accepted quote. */
export const notAgreedWords = (isQuoteMissing: boolean): string =>
  isQuoteMissing
    ? 'The quote that was accepted is not on this device. Bring it in with a copy; this paper is written from it.'
    : 'Nothing was accepted yet. This paper says what the customer agreed to: note the yes to the quote first.';

/** @returns why a paper about the goods cannot be made, and what mends it. */
export function goodsProblemWords(problem: GoodsProblem): string {
  switch (problem.kind) {
    case 'noCustomer':
      return 'Nobody is named as the customer, and this paper must say whom it is for. Choose the customer.';
    case 'nothingOrdered':
      return 'No job of this order has pieces in it. Add a job, and how many of each size.';
    case 'jobUnclear':
      return `The job “${problem.name}” names something that is not here, so nobody can say what is made. Look at its checks.`;
    case 'tooMany':
      return `A paper holds ${problem.most} ${problem.what}, and there are more. Make two orders of it.`;
    default:
      return problem satisfies never;
  }
}

export const confirmationAnswer = (by: string, total: string, choice: string): AnswerLine => ({
  strong: total,
  rest: `, accepted by ${by}${choice === '' ? '' : `: ${choice}`}`,
});

export const requestAnswer = (
  amount: string,
  what: 'deposit' | 'balance',
  paid: string | null,
): AnswerLine => ({
  strong: amount,
  rest: ` to ask for as ${what}${paid === null ? '' : `; ${paid} came`}`,
});

/** Whole minor units with their currency, in words. */
type MoneyWords = (minor: number) => string;

export const invoiceAnswer = (
  { total, due, isOfGoods }: { readonly total: number; readonly due: number; readonly isOfGoods: boolean },
  words: MoneyWords,
): AnswerLine => ({
  strong: words(total),
  rest: `${isOfGoods ? '' : ' for changes that no invoice asks for'}, ${
    due < 0 ? `and ${words(-due)} came beyond it` : `${words(due)} still to pay`
  }`,
});

/** What is said where changes that go on an invoice were given back with an earlier one. */
export const givenBackWords = (wishes: readonly string[]): string =>
  `${wishes.length === 1 ? 'A change' : `${wishes.length} changes`} on it ${
    wishes.length === 1 ? 'was' : 'were'
  } given back with an earlier invoice: ${wishes.map((wish) => `“${wish}”`).join(', ')}. Issued, it asks for the money again. Where nobody is to pay, take the change back in what happened.`;

/** @param left below 0 where more came than was asked */
export const receiptAnswer = (amount: number, left: number, words: MoneyWords): AnswerLine => ({
  strong: `${words(amount)} came`,
  rest: left < 0 ? `, ${words(-left)} beyond the total` : `, ${words(left)} left`,
});

export const proofAnswer = (prints: number, names: number, revisions: string): AnswerLine => ({
  strong: prints === 1 ? '1 print to approve' : `${prints} prints to approve`,
  rest: `${names === 0 ? '' : `, ${names} names`}; ${revisions}`,
});

/** @returns what is said of a proof that lacks pictures, and what mends it. */
export function missingPicturesWords(names: readonly string[]): {
  readonly sentence: string;
  readonly detail: string;
} {
  const one = names.length === 1;
  return {
    sentence: `No picture of ${listed(names.map((name) => `“${name}”`))} is here: ${
      one ? 'its place stays' : 'their places stay'
    } empty, so the customer says yes to a print that the proof does not show.`,
    detail: `Add the ${one ? 'picture' : 'pictures'} in the job before the proof goes out.`,
  };
}

export const revisionsWords = (used: number, included: number): string =>
  used === 0
    ? `no round of changes used of ${included} included`
    : `${used} of ${included} rounds of changes used`;

export const deliveryAnswer = (pieces: string, people: number): AnswerLine => ({
  strong: pieces,
  rest: people === 0 ? '' : `, packed for ${people === 1 ? '1 person' : `${people} people`}`,
});

export const careAnswer = (cards: number, isCut: boolean): AnswerLine => ({
  strong: cards === 1 ? '1 card' : `${cards} cards`,
  rest: isCut ? ' to cut out; print the file again for more pieces' : ' to cut out, one for each piece',
});

/** What is said where invoices in force ask for all of it already. */
export const invoiceInForceWords = (numbers: readonly string[]): string =>
  `${
    numbers.length === 1
      ? `Invoice ${numbers[0]} is in force, and a second one would ask for the money twice. Give it back by a credit note, or withdraw it,`
      : `Invoices ${numbers.join(', ')} are in force, and one more would ask for the money again. Give them back by credit notes, or withdraw them,`
  } before you bill anew. Changes that are noted from now on go on an invoice of their own.`;

/** @param left what no credit note gave back; with tax on top of it both are told, for its parts are typed without tax */
export const creditAnswer = (
  {
    left,
    mode,
    number,
  }: { readonly left: SaleSums; readonly mode: TaxOnPaper['mode']; readonly number: string },
  words: MoneyWords,
): AnswerLine => ({
  strong: words(left.total),
  rest: ` can be given back of invoice ${number}${
    mode === 'added' ? `: ${words(left.subtotal)} and ${words(left.tax)} of tax` : ''
  }`,
});
