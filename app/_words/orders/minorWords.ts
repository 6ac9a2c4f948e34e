import type { TextContext } from '@/app/_words/formatter';
import { usableLocale } from '@/app/_words/usableLocale';
import { formatMinor, type MinorUnits } from '@/shared/money';

/** @returns whole minor units in the currency's own digits, without its name: 76131 of USD is “761.31”. */
export const minorWords = (minor: number, currency: string, locale: string): string =>
  formatMinor(minor as MinorUnits, currency, locale);

/** @returns the same with the currency: “761.31 USD”. */
export const minorMoney = (minor: number, currency: string, locale: string): string =>
  `${minorWords(minor, currency, locale)} ${currency}`;

/** @returns an amount in a row of others: its currency is named where it is not the workshop's own. */
export const minorInRow = (minor: number, currency: string, context: TextContext): string =>
  (currency === context.currency ? minorWords : minorMoney)(minor, currency, usableLocale(context.locale));
