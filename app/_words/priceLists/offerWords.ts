import type { WorkerFailure } from '@/app/_network/workerFailure';
import { namesInWords } from '@/app/_words/docket/jobWords';
import { findingWords } from '@/app/_words/findings/findingWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { sentenceOf, whyMissing } from '@/app/_words/missingAnswerWords';
import type { FrozenOutcome, TaxMode } from '@/lib/priceLists/freezeItem';
import { fromMinor, type MinorUnits } from '@/shared/money';

/** What an item would be issued as today; `asked` until the sums are made. */
export type ItemOffer =
  | FrozenOutcome
  | { readonly kind: 'gone' | 'asked' }
  | { readonly kind: 'failed'; readonly failure: WorkerFailure };

/** Why an item cannot be issued: what is wrong, and what to do. */
interface RefusalWords {
  readonly sentence: string;
  readonly detail: string;
}

/** @returns null for an item that can be issued, and while its sums are made. */
export function refusalWords(offer: ItemOffer, name: string, context: TextContext): RefusalWords | null {
  const formatter = formatterFor(context);
  switch (offer.kind) {
    case 'frozen':
    case 'asked':
      return null;
    case 'gone':
      return {
        sentence: `The job of ${name} is no longer here.`,
        detail: 'Bring it back by undo, or take the item off the list.',
      };
    case 'noLine':
      return {
        sentence: `${name} is no longer a line of its job, or has no pieces.`,
        detail: 'Without pieces there is no price. Mend the job, or take the item off the list.',
      };
    case 'stopped':
      return {
        sentence: `The job of ${name} is stopped.`,
        detail: `${offer.why === null ? 'Its sums cannot be made.' : findingWords(offer.why, context).sentence} Mend it on its docket; until then no price can be promised.`,
      };
    case 'noTaxMode':
      return {
        sentence: `Nobody has said how the prices of ${name} stand to tax.`,
        detail: 'A customer has to know what is to be paid. Say it in the workshop, under ways of selling.',
      };
    case 'falls':
      return {
        sentence: `${name}: ${formatter.count(offer.at, 'piece')} would cost less than ${offer.at - 1}.`,
        detail:
          'Customers would find it and order more for less. Selling under a cap mends it; the docket shows other ways.',
      };
    case 'loses':
      return {
        sentence: `${name}: the price from ${formatter.count(offer.from, 'piece')} on is under the full cost.`,
        detail: `At ${formatter.count(offer.at, 'piece')} it leaves ${formatter.share(offer.margin)}. Raise it on the docket, or drop the break.`,
      };
    case 'failed':
      return { sentence: `${name} could not be priced.`, detail: sentenceOf(whyMissing(offer.failure)) };
    default:
      return offer satisfies never;
  }
}

export const noItemsWords: RefusalWords = {
  sentence: 'There is nothing on the list.',
  detail: 'Add a line of one of your jobs first.',
};

/** @returns what is wrong with items whose prices stand to tax in different ways. */
export function mixedTaxWords(
  items: readonly { readonly name: string; readonly taxMode: TaxMode }[],
): RefusalWords {
  const modes = [...new Set(items.map(({ taxMode }) => taxMode))];
  const groups = modes.map((mode) => {
    const names = items.filter(({ taxMode }) => taxMode === mode).map(({ name }) => name);
    return `${namesInWords(names)} ${mixedTax[mode]}`;
  });
  return {
    sentence: `The items stand to tax in different ways: ${groups.join('; ')}.`,
    detail: 'On one paper nobody could tell. Sell their jobs the same way, or make two lists.',
  };
}

const mixedTax: Readonly<Record<TaxMode, string>> = {
  added: 'with tax added later',
  inside: 'with tax inside',
  none: 'without tax',
};

/** @returns what a draft offers of an item, and what it leaves where it leaves least; '' where it is refused. */
export function offerLine(offer: ItemOffer, context: TextContext): string {
  if (offer.kind === 'asked') return 'Its prices are being made.';
  if (offer.kind !== 'frozen') return '';
  const formatter = formatterFor(context);
  const money = (minor: number) => formatter.money(fromMinor(minor as MinorUnits, context.currency));
  const { breaks, setUp } = offer.item;
  const prices = breaks.map(({ each }) => each);
  const [least, most] = [Math.min(...prices), Math.max(...prices)];
  const told =
    setUp !== null
      ? `${money(setUp.start)} to start and ${money(setUp.each)} a piece`
      : least === most
        ? `${money(most)} a piece`
        : `${money(most)} down to ${money(least)} a piece`;
  const line = `${told}; leaves ${formatter.share(Math.min(...breaks.map(({ leastMargin }) => leastMargin)))} where it leaves least.`;
  return offer.borne.includes('minimumOrder')
    ? `${line} A least order is not listed: ${offer.item.selling === 'onePrice' ? 'one piece is sold at this price' : 'the smallest order pays as much already'}.`
    : line;
}
