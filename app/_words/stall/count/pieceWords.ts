import { shortAmount } from './countWords';

/** @param minor what the customer pays on top; below 0 what goes back */
export const exchangeWords = (minor: number, currency: string, locale: string): string =>
  minor > 0
    ? `Exchange, ${shortAmount(minor, currency, locale)} on top`
    : `Exchange, ${shortAmount(-minor, currency, locale)} back`;

/** Why no further pieces can be counted in. */
export const fullWords =
  'As many were put out as a day can be closed with. Undo the last ones if they were mistyped.';

/** What is typed beyond so many times the price, or under that part of it, is likelier mistyped than meant (the product's own choice). */
const DOUBT_TIMES = 3;

type Doubt = 'nothing' | 'high' | 'low';

/**
 * @param asked the price that was typed, whole minor units
 * @param usual the price of the hour, whole minor units
 * @returns why it is asked about; null where it is not
 */
export function ownPriceDoubt(asked: number, usual: number): Doubt | null {
  if (asked === 0) return 'nothing';
  if (usual <= 0) return null;
  if (asked > usual * DOUBT_TIMES) return 'high';
  return asked * DOUBT_TIMES < usual ? 'low' : null;
}

export function doubtWords(
  doubt: Doubt,
  { asked, usual }: { readonly asked: number; readonly usual: number },
  currency: string,
  locale: string,
): string {
  const [typed, now] = [asked, usual].map((minor) => `${shortAmount(minor, currency, locale)} ${currency}`);
  switch (doubt) {
    case 'nothing':
      return 'For nothing: was it given away? A gift is counted apart from sales.';
    case 'high':
      return `${typed} is more than three times the price, ${now}. Is it typed right?`;
    case 'low':
      return `${typed} is less than a third of the price, ${now}. Is it typed right?`;
    default:
      return doubt satisfies never;
  }
}

/** A price of its own is a bargain already. */
export const joinsSetLabel = 'May be part of a set too';

/** @param minor what was paid for it, as prices write it; null where that is not typed */
export const refundWords = (minor: number | null, currency: string, locale: string): string =>
  minor === null ? 'Give it back' : `Give ${shortAmount(minor, currency, locale)} back`;
