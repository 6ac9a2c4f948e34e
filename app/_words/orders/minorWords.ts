import { formatMinor, type MinorUnits } from '@/shared/money';

/** @returns whole minor units in the currency's own digits, without its name: 76131 of USD is “761.31”. */
export const minorWords = (minor: number, currency: string, locale: string): string =>
  formatMinor(minor as MinorUnits, currency, locale);

/** @returns the same with the currency: “761.31 USD”. */
export const minorMoney = (minor: number, currency: string, locale: string): string =>
  `${minorWords(minor, currency, locale)} ${currency}`;
