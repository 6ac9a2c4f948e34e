import { formatNumber } from '@/shared/formatNumber';
import { formatMinor, LARGEST_AMOUNT, toMinor } from '@/shared/money';

/**
 * An amount in the currency's own digits, without the currency's name; in whole units beyond the largest amount
 * that is kept to the cent.
 *
 * @example amountWords(56.257, 'USD', 'en') // '56.26'
 */
export const amountWords = (amount: number, currency: string, locale: string): string =>
  Math.abs(amount) <= LARGEST_AMOUNT
    ? formatMinor(toMinor(amount, currency), currency, locale)
    : formatNumber(amount, locale, { maxDecimals: 0 });
